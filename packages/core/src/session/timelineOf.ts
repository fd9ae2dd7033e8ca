import type { FindingLift, LiftPlan, PlannedLift, TimelineItem } from './SessionPlan.ts';
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

function planned({ lift: { intent }, lift: whole, sets }: PlannedLift, lift: number) {
  return withRests(
    sets.map(
      ({ reps }, step): Piece => ({
        kind: 'work',
        lift,
        step,
        seconds: setSeconds(whole, reps.likely),
      }),
    ),
    intent.restSeconds,
  );
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
