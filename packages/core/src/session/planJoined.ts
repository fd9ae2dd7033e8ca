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

/**
 * Two lifts in rounds. The first one's set tires the second one, whose load follows: it is the one
 * with the best chance from what its muscles have left after the first set of the first lift and
 * the way over.
 *
 * Where the two cannot be joined they are planned one after the other, and the reason stands with
 * the first.
 *
 * @param straight plans one lift by itself.
 */
export function planJoined(
  question: LiftQuestion,
  { how, second }: NonNullable<LiftQuestion['joined']>,
  straight: LiftPlanner,
): PlannedLiftAndState {
  const { joined: _, ...first } = question;
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
  const opening = doSet(a, first.start, false);
  const rested = restCapacity(opening.own, how.transitionSeconds);
  const tired = together(stateOf(second.start), carriedOver(rested));
  const b = loadedLift(knownSecond, tired);
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
    const done = straight({ ...first, refused: [...first.refused, ...refusals] });
    return { ...done, second: straight(second) };
  }
}

function inRounds(
  a: LoadedLift,
  b: LoadedLift,
  how: JoinIntent,
  effect: PairEffect | undefined,
): PlannedLiftAndState {
  const [first, second] = [a.known.question, b.known.question];
  let own = { a: first.start.own, b: second.start.own };
  let carried = { a: first.start.carried, b: second.start.carried };
  const rest = (seconds: number) => {
    const all = (state: CapacityState) => restCapacity(state, seconds);
    own = { a: all(own.a), b: all(own.b) };
    carried = { a: all(carried.a), b: all(carried.b) };
  };
  const sets: { a: SetDone[]; b: SetDone[] } = { a: [], b: [] };
  const waits: number[] = [];
  const rounds = Math.max(first.lift.intent.sets, second.lift.intent.sets);
  for (let round = 0; round < rounds; round += 1) {
    const hasA = round < first.lift.intent.sets;
    const hasB = round < second.lift.intent.sets;
    if (hasA) {
      const fatigue = { own: own.a, carried: together(carried.a, carriedOver(own.b)) };
      const done = doSet(a, fatigue, round + 1 === first.lift.intent.sets);
      sets.a.push(done);
      own = { ...own, a: done.own };
    }
    if (hasA && hasB) rest(how.transitionSeconds);
    if (hasB) {
      const fatigue = { own: own.b, carried: together(carried.b, carriedOver(own.a)) };
      const done = doSet(b, fatigue, round + 1 === second.lift.intent.sets);
      sets.b.push(done);
      own = { ...own, b: done.own };
    }
    if (round + 1 === rounds) break;
    const wait = roundWait(how, roundSet(a, sets.a[round]), roundSet(b, sets.b[round]));
    waits.push(wait);
    rest(wait);
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
    end: own.a,
    second: { plan: { ...plannedLift(b, sets.b), join: join('second', effect) }, end: own.b },
  };
}

function roundSet({ known }: LoadedLift, done: SetDone | undefined): RoundSet | undefined {
  if (done === undefined) return undefined;
  const { lift } = known.question;
  const seconds = setSeconds(lift, done.set.reps.likely) + (done.chain?.addedSeconds ?? 0);
  return { seconds, restSeconds: lift.intent.restSeconds };
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
