import { requireNumber } from '../basis/index.ts';
import { generalCurve } from './generalCurve.ts';
import type { RepCurve } from './RepCurve.ts';

/**
 * How many repetitions end in failure at a share of the one-rep max.
 *
 * `1 + kappa * (capacity - share) / share^alpha`, a mean over sets, so not a whole number. One
 * repetition is exactly a share equal to the capacity left (1 when fresh); a larger share cannot be
 * lifted and gives 0. Fitted to shares from 0.4 to 0.95; the error grows below 0.5, where a
 * prediction for a person comes from `forecastReps`, which widens there and says so.
 *
 * @param share load divided by one-rep max, above 0 to 2.
 * @param curve kappa above 0 at the pace of the set; {@link generalCurve} when nothing is known.
 * @param capacity share of fresh strength that is left, above 0 to 1.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { repsAtShare } from '@windlass/core/strength';
 * repsAtShare(1); // 1
 * repsAtShare(0.64, { kappa: 40, alpha: 0.5 }); // 19
 * ```
 */
export function repsAtShare(share: number, curve: RepCurve = generalCurve, capacity = 1): number {
  requireNumber('repsAtShare', 'share', share, Number.MIN_VALUE, 2);
  requireNumber('repsAtShare', 'kappa', curve.kappa, 0);
  requireNumber('repsAtShare', 'alpha', curve.alpha, 0.25, 2);
  requireNumber('repsAtShare', 'capacity', capacity, Number.MIN_VALUE, 1);
  if (share > capacity) return 0;
  return 1 + (curve.kappa * (capacity - share)) / share ** curve.alpha;
}
