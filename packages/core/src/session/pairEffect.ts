import type { MuscleId } from '../anatomy/index.ts';
import { type PairInput, type PairRefusal, planPair } from '../pairing/index.ts';
import { kappaBand } from '../strength/index.ts';
import type { JoinIntent } from './Intent.ts';
import type { PairEffect } from './JoinedLifts.ts';
import type { LoadedLift } from './knownLift.ts';
import { together } from './LiftFatigue.ts';
import type { WorkSet } from './LiftPlan.ts';

/** What the isolation set does to the second lift of a pair, or why the two are none. */
export type PairAnswer =
  | { readonly kind: 'effect'; readonly effect: PairEffect }
  | { readonly kind: 'refused'; readonly refusals: readonly PairRefusal[] };

const MOST_LEFT = 10;

/**
 * @param first the isolation lift, and its first set.
 * @param second the lift after it, as it would be loaded without that set.
 */
export function pairEffect(
  first: LoadedLift,
  { reps }: WorkSet,
  second: LoadedLift,
  { transitionSeconds }: JoinIntent,
): PairAnswer {
  const { exercise } = first.known.question.lift;
  const { work } = second.load;
  const { start } = second.known.question;
  const pair = planPair({
    target: Object.keys(exercise.direct) as MuscleId[],
    isolation: {
      exercise,
      reps: Math.max(1, reps.likely),
      repsLeft: Math.min(MOST_LEFT, first.known.repsInReserve),
      ...ownPace(first),
    },
    compound: {
      exercise: second.known.question.lift.exercise,
      usual: { load: work.choice.load, reps: Math.max(1, work.reps.likely) },
      ...ownPace(second),
    },
    transitionSeconds,
    start: together(start.own, start.carried),
  });
  if (pair.kind === 'refused') return pair;
  const { loadShare, recovered, sharePerRep, cautions } = pair;
  return {
    kind: 'effect',
    effect: { usual: work, loadShare, recovered, sharePerRep, cautions },
  };
}

function ownPace({ known }: LoadedLift): Pick<PairInput['isolation'], 'secondsPerRep' | 'curve'> {
  const { posterior, secondsPerRep } = known;
  return {
    secondsPerRep,
    curve: { kappa: kappaBand(posterior).likely, alpha: posterior.alpha },
  };
}
