import type { MuscleId } from '../anatomy/index.ts';
import type { Gym } from '../equipment/index.ts';
import type { Limits } from '../safety/index.ts';
import type { Client } from './Client.ts';
import { fatigueFor } from './fatigueFor.ts';
import type { SessionFatigue } from './LiftFatigue.ts';
import type { LeftOutLift, LiftPlan, Refusal } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';
import type { KeptLift } from './limit/LiftPieces.ts';
import { type ChainedExercise, loweringsLeft } from './loweringsLeft.ts';
import { minutesOf } from './minutesOf.ts';
import type { LiftPlanner, LiftQuestion, PlannedLiftAndState } from './planLift.ts';
import { restSession } from './restSession.ts';
import type { SessionMinutes, TimelineItem } from './SessionPlan.ts';
import type { SettledLift, UnsettledLift } from './settleLift.ts';
import { timelineOf } from './timelineOf.ts';

/** What a session is laid out from. */
export interface LayOutQuestion {
  readonly lifts: readonly (SettledLift | UnsettledLift)[];
  readonly client: Client;
  readonly gym: Gym;
  readonly date: string;
  readonly limits: Limits;
  readonly changeSeconds: number;
}

/** Lifts with their loads, one after the other in time. */
export interface LaidOut {
  readonly lifts: readonly LiftPlan[];
  readonly timeline: readonly TimelineItem[];
  readonly minutes: SessionMinutes;
}

/**
 * The lifts of a session one after the other, each from the state in which those before it leave
 * the muscles; two that are joined in rounds.
 *
 * @param kept what a time limit leaves of them; all of it when left out.
 */
export function layOut(
  question: LayOutQuestion,
  planOne: LiftPlanner,
  kept?: readonly KeptLift[],
): LaidOut {
  const { client, gym, date, limits, changeSeconds } = question;
  const lifts: LiftPlan[] = [];
  let warm: ReadonlySet<MuscleId> = new Set();
  let fatigue: SessionFatigue = new Map();
  for (;;) {
    const place = lifts.length;
    const wanted = wantedAt(question, place, kept);
    if (wanted === undefined) break;
    if (wanted.kind === 'left-out') {
      lifts.push(wanted);
      continue;
    }
    const rested = restSession(fatigue, changeSeconds);
    const ask = ({ kind: _, ...one }: KeptWanted): LiftQuestion => ({
      ...one,
      client,
      gym,
      date,
      limits: loweringsLeft(limits, one.lift.exercise, lifts.flatMap(chainOf)),
      start: fatigueFor(one.lift.exercise.id, rested),
      warm,
    });
    const next = wantedAt(question, place + 1, kept);
    const { second, ...first } = planOne(withJoined(ask(wanted), next, ask));
    const block = second ? [first, second] : [first];
    lifts.push(...block.map(({ plan }) => plan));
    const done = block.flatMap(({ plan, end }) =>
      plan.kind === 'left-out' ? [] : [{ lift: plan.lift, end }],
    );
    if (done.length === 0) continue;
    warm = new Set([...warm, ...done.flatMap(({ lift }) => musclesOf(lift))]);
    const after = restSession(rested, secondsOf(block));
    fatigue = new Map([...after, ...done.map(({ lift, end }) => [lift.exercise.id, end] as const)]);
  }
  const timeline = timelineOf(lifts, changeSeconds);
  return { lifts, timeline, minutes: minutesOf(timeline) };
}

/** A lift that is to be planned, with what a time limit leaves of it. */
type KeptWanted = SettledLift & Pick<LiftQuestion, 'skipSteps' | 'skipChain'>;

function wantedAt(
  { lifts }: LayOutQuestion,
  place: number,
  kept: readonly KeptLift[] | undefined,
): KeptWanted | LeftOutLift | undefined {
  const wanted = lifts[place];
  if (wanted === undefined) return undefined;
  if (wanted.kind === 'unsettled') {
    const { intent, reason, message } = wanted;
    return { kind: 'left-out', intent, reason, message, exchanges: [] };
  }
  const left = kept?.find(({ lift }) => lift === place);
  if (kept && !left) return noTime(wanted.lift);
  const lift = left
    ? { ...wanted.lift, intent: { ...wanted.lift.intent, sets: left.sets } }
    : wanted.lift;
  const { skipSteps = 0, skipChain = false } = left ?? {};
  return { ...wanted, lift, skipSteps, skipChain };
}

function noTime({ intent, exercise }: Lift): LeftOutLift {
  const message = `There is no time for ${exercise.name} within the minutes given.`;
  return { kind: 'left-out', intent, reason: 'no-time', message, exchanges: [] };
}

/** With the lift that it is done in rounds with, where it is to be and that one is done. */
function withJoined(
  question: LiftQuestion,
  next: KeptWanted | LeftOutLift | undefined,
  ask: (one: KeptWanted) => LiftQuestion,
): LiftQuestion {
  const how = question.lift.intent.join;
  if (!how || (next?.kind === 'left-out' && next.reason === 'no-time')) return question;
  if (next?.kind === 'settled') return { ...question, joined: { how, second: ask(next) } };
  const message = next
    ? 'The lift that it was to be joined with is left out.'
    : 'No lift comes after it that it could be joined with.';
  const refusal: Refusal = { what: 'join', code: 'session.join-no-second', message };
  return { ...question, refused: [...question.refused, refusal] };
}

function chainOf(plan: LiftPlan): readonly ChainedExercise[] {
  if (plan.kind !== 'planned' || !plan.chain) return [];
  const { exercise } = plan.lift;
  return [{ exercise, stages: plan.chain.stages.map(({ stage }) => stage) }];
}

function musclesOf({ shares }: Lift): readonly MuscleId[] {
  return Object.keys(shares) as MuscleId[];
}

/** How long a block takes after it was set up. */
function secondsOf(block: readonly Pick<PlannedLiftAndState, 'plan'>[]): number {
  const last = timelineOf(
    block.map(({ plan }) => plan),
    0,
  ).at(-1);
  return last ? last.startSeconds + last.seconds : 0;
}
