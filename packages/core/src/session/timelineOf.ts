import type { RampAnswer } from '../warmup/index.ts';
import type { FindingLift, LiftPlan, PlannedLift } from './LiftPlan.ts';
import type { TimelineItem } from './SessionPlan.ts';
import { setSeconds } from './setSeconds.ts';

type Piece = Omit<TimelineItem, 'startSeconds'>;

/**
 * A session laid out in time: setting up each exercise, its warm-up sets, its work sets and the
 * rests between. The likely number of repetitions counts, and so do both sides of a one-sided
 * lift. No rest follows the last set of a lift: the change to the next one takes its place.
 */
export function timelineOf(
  lifts: readonly LiftPlan[],
  changeSeconds: number,
): readonly TimelineItem[] {
  const pieces = lifts.flatMap((plan, lift) => {
    if (plan.kind === 'left-out') return [];
    const change: Piece = { kind: 'change', lift, step: 0, seconds: changeSeconds };
    return [change, ...(plan.kind === 'planned' ? planned(plan, lift) : finding(plan, lift))];
  });
  let startSeconds = 0;
  return pieces.map((piece) => {
    const item = { ...piece, startSeconds };
    startSeconds += piece.seconds;
    return item;
  });
}

function planned({ lift: whole, warmUp, sets }: PlannedLift, lift: number): readonly Piece[] {
  const work = sets.map(
    ({ reps }, step): Piece => ({
      kind: 'work',
      lift,
      step,
      seconds: setSeconds(whole, reps.likely),
    }),
  );
  return [...rampPieces(warmUp, lift), ...withRests(work, whole.intent.restSeconds)];
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
    (_, step): Piece => ({
      kind: 'work',
      lift,
      step,
      seconds,
    }),
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
