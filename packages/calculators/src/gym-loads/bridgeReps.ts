import type { Band } from '@windlass/core/basis';
import type { Load } from '@windlass/core/load';
import { generalCurve, repsAtShare, shareForReps } from '@windlass/core/strength';

/** Standard deviations that enclose 80 % of a normal distribution. */
const REACH = 1.2816;

/**
 * The reps with one load that foretell `goal` reps with a heavier one: the rep curve there and back,
 * over the spread of endurance between 8 of 10 people.
 */
export function bridgeReps(goal: number, from: Load, to: Load): Band {
  const ratio = from / to;
  const [low, likely, high] = [REACH, 0, -REACH]
    .map((deviations) => {
      const kappa = generalCurve.kappa * Math.exp(deviations * generalCurve.kappaLogSd);
      const curve = { kappa, alpha: generalCurve.alpha };
      return repsAtShare(shareForReps(goal, curve) * ratio, curve);
    })
    .sort((a, b) => a - b) as [number, number, number];
  return { low, likely, high, level: 0.8 };
}
