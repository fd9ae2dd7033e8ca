import { type ReachableLoads, reachableLoads } from '@windlass/core/equipment';
import { type Load, loadFromValue } from '@windlass/core/load';
import {
  type LoggedSet,
  type LogReview,
  liftSessions,
  type MovedLoadContext,
  type NextLoadQuestion,
  nextLoad,
  reviewLog,
} from '@windlass/core/progress';
import type { Computed } from '../contract/Definition.ts';
import { type ReviewLift, reviewLifts } from '../precomputed/reviewLifts.ts';
import { type Beliefs, beliefsOf } from './beliefsOf.ts';
import { evidenceOf } from './evidenceOf.ts';
import type { LogReviewInput } from './fields.ts';
import { gearFor, type InUse } from './gearFor.ts';
import { lastCall } from './lastCall.ts';
import { type LoadedAdvice, loadedAdvice } from './loadedAdvice.ts';
import { loggedSets } from './loggedSets.ts';
import { noReview, unreadBelow } from './noReview.tsx';
import type { ReadLog } from './readLog.ts';

export interface LogReviewResult {
  readonly log: ReadLog;
  readonly review: LogReview;
  /** The lift that is asked about, as the log names it, and the exercise if it is known. */
  readonly lift: string;
  readonly known: ReviewLift | undefined;
  /** The sets that its next load comes from. */
  readonly evidence: readonly LoggedSet[];
  readonly gear: InUse;
  readonly loads: ReachableLoads;
  readonly context: MovedLoadContext;
  readonly beliefs: Beliefs;
  readonly question: NextLoadQuestion;
  readonly advice: LoadedAdvice;
}

/** The next load of one lift, and the whole log at a glance. */
export function computeLogReview(input: LogReviewInput): Computed<LogReviewResult> {
  const log = loggedSets(input);
  if (log.missing.length > 0) return noReview(log, 'columns');
  const body = input.bodyWeight ? loadFromValue(input.bodyWeight) : undefined;
  const review = reviewOnce(log.sets, input.on, body);
  const [latest] = review.lifts;
  if (log.sets.length === 0) return noReview(log, 'no-sets');
  const until = log.sets.filter(({ date }) => date <= input.on);
  const lift = input.lift ?? latest?.exercise ?? until.at(-1)?.exercise;
  if (lift === undefined) return noReview(log, 'nothing-to-review');
  const evidence = evidenceOf(until, lift);
  const last = evidence.at(-1);
  if (last === undefined) return noReview(log, 'lift-not-in-log');
  const known = reviewLifts.find(({ id }) => id === lift);
  const gear = gearFor(input, last, known);
  const loads = reachableLoads(gear.equipment, gear.use);
  const context = contextOf(input, known, loads);
  const { sessions, leftOut } = liftSessions(evidence, lift, context);
  if (sessions.length === 0) return noReview(log, leftOut[0]?.reason ?? 'lift-not-in-log');
  const beliefs = beliefsOf(sessions, known, input.on);
  const question: NextLoadQuestion = {
    sessions,
    window: { minReps: input.window.low, maxReps: input.window.high },
    repsInReserve: input.reserve,
    equipment: gear.equipment,
    loads,
    on: input.on,
    curve: beliefs.curve,
    pain: input.pain === 'yes',
    ...(beliefs.next ? { posterior: beliefs.next } : {}),
    ...(beliefs.paceSeconds === undefined ? {} : { secondsPerRep: beliefs.paceSeconds }),
    ...(beliefs.hoursNeeded === undefined ? {} : { hoursNeeded: beliefs.hoursNeeded }),
  };
  const advice = loadedAdvice(nextLoad(question));
  if ('reason' in advice) return { ...advice, ...unreadBelow(log) };
  return {
    kind: 'result',
    result: { log, review, lift, known, evidence, gear, loads, context, beliefs, question, advice },
  };
}

function contextOf(
  { bodyWeight }: LogReviewInput,
  known: ReviewLift | undefined,
  loads: ReachableLoads,
): MovedLoadContext {
  return {
    ...(bodyWeight ? { bodyWeight: loadFromValue(bodyWeight) } : {}),
    ...(known?.movedShare ? { movedShare: known.movedShare } : {}),
    ...(loads.kind === 'loads' && loads.counts === 'stack' ? { machine: loads } : {}),
  };
}

/** The review of the same log on the same day is the same, whatever else is changed in the form. */
const reviewOnce = lastCall(
  (log: readonly LoggedSet[], on: string, bodyWeight: Load | undefined): LogReview =>
    reviewLog({
      log,
      exercises: reviewLifts,
      on,
      body: bodyWeight === undefined ? {} : { bodyWeight },
    }),
);
