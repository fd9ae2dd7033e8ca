import { type CapacityState, restCapacity } from '../capacity/index.ts';
import { carriedOver } from './carriedOver.ts';
import { doSet, type SetDone } from './doSet.ts';
import type { JoinIntent } from './Intent.ts';
import type { JoinedLift, PairEffect } from './JoinedLifts.ts';
import { joinRefusals } from './joinRefusals.ts';
import { knownLift } from './knownLift.ts';
import type { LiftFatigue } from './LiftFatigue.ts';
import type { Refusal } from './LiftPlan.ts';
import { liftLoad } from './liftLoad.ts';
import type { LoadedLift } from './loadedLift.ts';
import { loadedLift } from './loadedLift.ts';
import { loweringsLeft } from './loweringsLeft.ts';
import { pairEffect } from './pairEffect.ts';
import type { LiftPlanner, LiftQuestion, PlannedLiftAndState } from './planLift.ts';
import { plannedLift } from './plannedLift.ts';
import { type RoundSet, roundWait } from './roundWait.ts';
import { setSeconds } from './setSeconds.ts';
import { together } from './together.ts';

const LONGEST_TRANSITION = 600;

/** Fatigue of a lift in rounds. */
interface RoundFatigue extends LiftFatigue {
  /** What its sets in these rounds alone have taken: the other lift knows of those before. */
  readonly taken: CapacityState;
}

/**
 * Two lifts in rounds. The first one's set tires the second one, whose load follows: it is the one
 * with the best chance from what its muscles have left after the first set of the first lift and
 * the way over.
 *
 * Where the two cannot be joined the first is planned by itself, with the reason, and the second is
 * left to come after it.
 *
 * @param straight plans one lift by itself.
 */
export function planJoined(
  question: LiftQuestion,
  { how, second }: NonNullable<LiftQuestion['joined']>,
  straight: LiftPlanner,
): PlannedLiftAndState {
  const { joined: _, ...first } = question;
  if (!(how.transitionSeconds >= 0 && how.transitionSeconds <= LONGEST_TRANSITION)) {
    const message = `Give the seconds between two joined lifts as a number from 0 to ${LONGEST_TRANSITION}.`;
    return apart([{ what: 'join', code: 'session.join-transition', message }]);
  }
  const knownFirst = knownLift(first);
  const knownSecond = knownLift(withLoweringsLeft(second, knownFirst));
  if (knownFirst.kind !== 'known' || knownSecond.kind !== 'known') {
    const message =
      'Two lifts are joined when the loads of both are known: do them apart this time.';
    return apart([{ what: 'join', code: 'session.join-loads-unknown', message }]);
  }
  const a = loadedLift(knownFirst, stateOf(first.start));
  const usual = liftLoad(knownSecond, stateOf(second.start));
  if (a.kind !== 'loaded' || usual.kind === 'left-out') {
    const message = 'Only one of the two lifts has a load here, so there is nothing to join.';
    return apart([{ what: 'join', code: 'session.join-no-load', message }]);
  }
  const opening = doSet(a, first.start, first.lift.intent.sets === 1);
  const over = rested(worked(begun(first.start), opening), how.transitionSeconds);
  const wait = meanwhile(how, a, opening) + how.transitionSeconds;
  const b = loadedLift(knownSecond, stateOf(beside(rested(begun(second.start), wait), over)));
  const effect =
    how.kind === 'pair'
      ? pairEffect(a, opening.set, { known: knownSecond, usual: usual.work }, how)
      : undefined;
  const refused = joinRefusals(a.known, knownSecond, how, effect);
  if (refused.length > 0) return apart(refused);
  if (b.kind !== 'loaded') {
    const code = 'session.join-too-tired';
    return apart([{ what: 'join', code, message: `After the first lift: ${b.message}` }]);
  }
  return inRounds(a, b, how, effect?.kind === 'effect' ? effect.effect : undefined);

  function apart(refusals: readonly Refusal[]): PlannedLiftAndState {
    return straight({ ...first, refused: [...first.refused, ...refusals] });
  }
}

function inRounds(
  a: LoadedLift,
  b: LoadedLift,
  how: JoinIntent,
  effect: PairEffect | undefined,
): PlannedLiftAndState {
  const [first, second] = [a.known.question, b.known.question];
  let state = { a: begun(first.start), b: begun(second.start) };
  const sets: { a: SetDone[]; b: SetDone[] } = { a: [], b: [] };
  const waits: number[] = [];
  const rest = (seconds: number) => {
    state = { a: rested(state.a, seconds), b: rested(state.b, seconds) };
  };
  const setOfA = (round: number, wait: number) =>
    doSet(
      a,
      beside(rested(state.a, wait), rested(state.b, wait)),
      round + 1 === first.lift.intent.sets,
    );
  /** After less rest the first one's set is shorter, and so is what it adds to the second one's rest. */
  const waitBefore = (round: number) => {
    const [before, after] = [roundSet(a, sets.a, round - 1), roundSet(b, sets.b, round - 1)];
    const wait = roundWait(how, before, after);
    if (!before?.goesOn) return wait;
    const seconds = secondsOf(a, setOfA(round, wait));
    return Math.max(wait, roundWait(how, { ...before, seconds }, after));
  };
  const rounds = Math.max(first.lift.intent.sets, second.lift.intent.sets);
  for (let round = 0; round < rounds; round += 1) {
    if (round > 0) {
      const wait = waitBefore(round);
      waits.push(wait);
      rest(wait);
    }
    const hasA = round < first.lift.intent.sets;
    const hasB = round < second.lift.intent.sets;
    if (hasA) {
      const done = setOfA(round, 0);
      sets.a.push(done);
      state = { a: worked(state.a, done), b: rested(state.b, meanwhile(how, a, done)) };
    }
    if (hasA && hasB) rest(how.transitionSeconds);
    if (hasB) {
      const done = doSet(b, beside(state.b, state.a), round + 1 === second.lift.intent.sets);
      sets.b.push(done);
      state = { a: rested(state.a, meanwhile(how, b, done)), b: worked(state.b, done) };
    }
  }
  const { kind, transitionSeconds } = how;
  const join = (place: JoinedLift['place'], more?: PairEffect): JoinedLift => ({
    kind,
    place,
    transitionSeconds,
    waits,
    ...(more && { effect: more }),
  });
  return {
    plan: { ...plannedLift(a, sets.a), join: join('first') },
    end: state.a.own,
    second: { plan: { ...plannedLift(b, sets.b), join: join('second', effect) }, end: state.b.own },
  };
}

function roundSet(one: LoadedLift, sets: readonly SetDone[], round: number): RoundSet | undefined {
  const done = sets[round];
  if (done === undefined) return undefined;
  const { sets: wanted, restSeconds } = one.known.question.lift.intent;
  return { seconds: secondsOf(one, done), restSeconds, goesOn: round + 1 < wanted };
}

function secondsOf({ known }: LoadedLift, { set, chain }: SetDone): number {
  return setSeconds(known.question.lift, set.reps.likely) + (chain?.addedSeconds ?? 0);
}

/** How long a set of one lift lets the other one rest: in a pair that works as well. */
function meanwhile({ kind }: JoinIntent, lift: LoadedLift, done: SetDone): number {
  return kind === 'in-turn' ? secondsOf(lift, done) : 0;
}

function begun(start: LiftFatigue): RoundFatigue {
  return { ...start, taken: {} };
}

function rested({ own, carried, taken }: RoundFatigue, seconds: number): RoundFatigue {
  const after = (state: CapacityState) => restCapacity(state, seconds);
  return { own: after(own), carried: after(carried), taken: after(taken) };
}

function worked(before: RoundFatigue, { own }: SetDone): RoundFatigue {
  const added = Object.entries(own).map(([muscle, { fast, slow }]) => {
    const was = before.own[muscle] ?? { fast: 0, slow: 0 };
    return [muscle, { fast: fast - was.fast, slow: slow - was.slow }] as const;
  });
  return { ...before, own, taken: together(before.taken, Object.fromEntries(added)) };
}

/** With what the rounds have taken by the other lift, as far as it shows in this one. */
function beside({ own, carried }: RoundFatigue, other: RoundFatigue): LiftFatigue {
  return { own, carried: together(carried, carriedOver(other.taken)) };
}

/** What the first lift's chain leaves of the lowerings that this person may do. */
function withLoweringsLeft(
  second: LiftQuestion,
  first: ReturnType<typeof knownLift>,
): LiftQuestion {
  if (first.kind !== 'known' || !first.chain) return second;
  const { exercise } = first.question.lift;
  const before = [{ exercise, stages: first.chain }];
  return { ...second, limits: loweringsLeft(second.limits, second.lift.exercise, before) };
}

function stateOf({ own, carried }: LiftFatigue): CapacityState {
  return together(own, carried);
}
