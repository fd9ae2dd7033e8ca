import type { MuscleId } from '../anatomy/index.ts';
import type { ReachableLoad } from '../equipment/index.ts';
import { type PairInput, type PairRefusal, planPair } from '../pairing/index.ts';
import { kappaBand, type LoadChance } from '../strength/index.ts';
import { forecastPace } from './forecastPace.ts';
import type { JoinIntent } from './Intent.ts';
import type { PairEffect } from './JoinedLifts.ts';
import type { KnownLift } from './knownLift.ts';
import type { WorkSet } from './LiftPlan.ts';
import type { LoadedLift } from './loadedLift.ts';
import { together } from './together.ts';

/** What the isolation set does to the second lift of a pair, or why the two are none. */
export type PairAnswer =
  | { readonly kind: 'effect'; readonly effect: PairEffect }
  | { readonly kind: 'refused'; readonly refusals: readonly PairRefusal[] };

/** A lift with the load that it has by itself. */
export interface UsualLift {
  readonly known: KnownLift;
  readonly usual: LoadChance<ReachableLoad>;
}

/** What `planPair` takes as repetitions, and as repetitions that are left. */
const MOST_REPS = 100;
const MOST_LEFT = 10;

/**
 * @param first the isolation lift, and its first set.
 * @param second the lift after it, and its load without that set.
 */
export function pairEffect(
  first: LoadedLift,
  { reps }: WorkSet,
  { known, usual }: UsualLift,
  { transitionSeconds }: JoinIntent,
): PairAnswer {
  const { exercise } = first.known.question.lift;
  const { start, lift } = known.question;
  const pair = planPair({
    target: Object.keys(exercise.direct) as MuscleId[],
    isolation: {
      exercise,
      reps: countOf(reps.likely),
      repsLeft: Math.min(MOST_LEFT, first.known.repsInReserve),
      ...ownPace(first.known),
    },
    compound: {
      exercise: lift.exercise,
      usual: { load: usual.choice.load, reps: countOf(usual.reps.likely) },
      ...ownPace(known),
    },
    transitionSeconds,
    start: together(start.own, start.carried),
  });
  if (pair.kind === 'refused') return pair;
  const { loadShare, recovered, sharePerRep, cautions } = pair;
  return {
    kind: 'effect',
    effect: { usual, loadShare, recovered, sharePerRep, cautions },
  };
}

function countOf(reps: number): number {
  return Math.min(Math.max(reps, 1), MOST_REPS);
}

function ownPace({
  posterior,
  secondsPerRep,
}: KnownLift): Pick<PairInput['isolation'], 'secondsPerRep' | 'curve'> {
  return {
    secondsPerRep: forecastPace(secondsPerRep),
    curve: { kappa: kappaBand(posterior).likely, alpha: posterior.alpha },
  };
}
