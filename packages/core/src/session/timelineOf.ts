import type { RampAnswer } from '../warmup/index.ts';
import type { JoinedLift } from './JoinedLifts.ts';
import type { FindingLift, LiftPlan, PlannedLift } from './LiftPlan.ts';
import type { TimelineItem } from './SessionPlan.ts';
import { setSeconds } from './setSeconds.ts';

type Piece = Omit<TimelineItem, 'startSeconds'>;

/**
 * A session laid out in time: setting up each exercise, its warm-up sets, its work sets and the
 * rests between. The likely number of repetitions counts, and so do both sides of a one-sided
 * lift. No rest follows the last set of a lift: the change to the next one takes its place.
 *
 * Two joined lifts are set up and warmed up one after the other; then come their rounds. The way
 * between their sets is a change of the lift that it leads to.
 */
export function timelineOf(
  lifts: readonly LiftPlan[],
  changeSeconds: number,
): readonly TimelineItem[] {
  const pieces = lifts.flatMap((plan, lift) => {
    if (plan.kind === 'left-out') return [];
    const change: Piece = { kind: 'change', lift, step: 0, seconds: changeSeconds };
    if (plan.kind === 'finding') return [change, ...finding(plan, lift)];
    const ramp = [change, ...rampPieces(plan.warmUp, lift)];
    if (!plan.join) return [...ramp, ...straight(plan, lift)];
    const before = lifts[lift - 1];
    if (plan.join.place === 'first' || before?.kind !== 'planned') return ramp;
    return [...ramp, ...rounds(before, plan, plan.join, lift)];
  });
  let startSeconds = 0;
  return pieces.map((piece) => {
    const item = { ...piece, startSeconds };
    startSeconds += piece.seconds;
    return item;
  });
}

/** A set, the last one with what goes on past lifting failure. */
function workPiece(plan: PlannedLift, lift: number, step: number): Piece {
  const { sets, chain } = plan;
  const added = step + 1 === sets.length ? (chain?.addedSeconds ?? 0) : 0;
  const seconds = setSeconds(plan.lift, sets[step]?.reps.likely ?? 0) + added;
  return { kind: 'work', lift, step, seconds };
}

function straight(plan: PlannedLift, lift: number): readonly Piece[] {
  const work = plan.sets.map((_, step) => workPiece(plan, lift, step));
  return withRests(work, plan.lift.intent.restSeconds);
}

/** The rounds of a lift with the one before it; `lift` is the place of the second. */
function rounds(
  first: PlannedLift,
  second: PlannedLift,
  join: JoinedLift,
  lift: number,
): readonly Piece[] {
  const way = (to: number, step: number): Piece => ({
    kind: 'change',
    lift: to,
    step,
    seconds: join.transitionSeconds,
  });
  const count = Math.max(first.sets.length, second.sets.length);
  const pieces: Piece[] = [way(lift - 1, 1)];
  for (let round = 0; round < count; round += 1) {
    if (round > 0) {
      const last = round <= second.sets.length ? lift : lift - 1;
      const seconds = join.waits[round - 1] ?? 0;
      pieces.push({ kind: 'rest', lift: last, step: round - 1, seconds });
    }
    const a = round < first.sets.length ? workPiece(first, lift - 1, round) : undefined;
    const b = round < second.sets.length ? workPiece(second, lift, round) : undefined;
    if (a) pieces.push(a);
    if (a && b) pieces.push(way(lift, round + 1));
    if (b) pieces.push(b);
  }
  return pieces;
}

/** A warm-up set with the change of load before it and the rest after it, as one stretch. */
function rampPieces(warmUp: RampAnswer, lift: number): readonly Piece[] {
  if (warmUp.kind !== 'ramp') return [];
  const known = warmUp.steps.reduce((sum, step) => sum + step.seconds + step.restSeconds, 0);
  const handling = Math.max(0, warmUp.minutes * 60 - known);
  return warmUp.steps.map(({ seconds, restSeconds }, step) => ({
    kind: 'warm-up',
    lift,
    step,
    seconds: seconds + restSeconds + (step === 0 ? handling : 0),
  }));
}

function finding({ lift: whole, mostTries, reps }: FindingLift, lift: number) {
  const seconds = setSeconds(whole, reps);
  const tries = Array.from(
    { length: mostTries },
    (_, step): Piece => ({ kind: 'work', lift, step, seconds }),
  );
  return withRests(tries, whole.intent.restSeconds);
}

function withRests(sets: readonly Piece[], restSeconds: number): readonly Piece[] {
  return sets.flatMap((set, index) =>
    index === 0
      ? [set]
      : [{ kind: 'rest', lift: set.lift, step: index - 1, seconds: restSeconds }, set],
  );
}
