import type { Band } from '@windlass/core/basis';
import type { Load } from '@windlass/core/load';
import { generalCurve, repsAtShare, shareForReps } from '@windlass/core/strength';
import { kappaOfPeople } from '../shared/kappaOfPeople.ts';

/**
 * The reps with one load that foretell `goal` reps with a heavier one: the rep curve there and back,
 * over the spread of endurance between 8 of 10 people.
 */
export function bridgeReps(goal: number, from: Load, to: Load): Band {
  const ratio = from / to;
  const people = kappaOfPeople(generalCurve);
  const [low, likely, high] = [people.low, people.likely, people.high]
    .map((kappa) => {
      const curve = { kappa, alpha: generalCurve.alpha };
      return repsAtShare(shareForReps(goal, curve) * ratio, curve);
    })
    .sort((a, b) => a - b) as [number, number, number];
  return { low, likely, high, level: 0.8 };
}
