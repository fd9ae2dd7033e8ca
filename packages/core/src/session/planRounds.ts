import { doSet, type SetDone } from './doSet.ts';
import type { JoinIntent } from './Intent.ts';
import type { JoinedLift, PairEffect } from './JoinedLifts.ts';
import type { LoadedLift } from './loadedLift.ts';
import type { PlannedLiftAndState } from './planLift.ts';
import { plannedLift } from './plannedLift.ts';
import { begun, beside, rested, worked } from './roundFatigue.ts';
import { type RoundSet, roundWait } from './roundWait.ts';
import { secondsOfSet } from './secondsOfSet.ts';
import { setWait } from './setWait.ts';

/** The sets of two lifts in turn, each with what the other and the rests have left of its muscles. */
export function planRounds(
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
    const seconds = secondsOfSet(a, setOfA(round, wait));
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
      state = { a: worked(state.a, done), b: rested(state.b, setWait(how, a, done)) };
    }
    if (hasA && hasB) rest(how.transitionSeconds);
    if (hasB) {
      const done = doSet(b, beside(state.b, state.a), round + 1 === second.lift.intent.sets);
      sets.b.push(done);
      state = { a: rested(state.a, setWait(how, b, done)), b: worked(state.b, done) };
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
  return { seconds: secondsOfSet(one, done), restSeconds, goesOn: round + 1 < wanted };
}
