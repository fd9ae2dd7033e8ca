import { requireNumber } from '../basis/index.ts';
import { generalCurve } from './generalCurve.ts';
import type { RepCurve } from './RepCurve.ts';

/**
 * The share of the one-rep max that fails after so many repetitions: the inverse of `repsAtShare`.
 *
 * Solved by hand for alpha = 1 (`kappa * capacity / (kappa + reps - 1)`) and alpha = 1/2 (a square
 * in the root of the share), by halving otherwise, to the last digits.
 *
 * @param reps repetitions to failure, 1 to 1000; fractions are means over sets.
 * @param curve kappa above 0 at the pace of the set.
 * @param capacity share of fresh strength that is left, above 0 to 1.
 * @returns above 0, at most the capacity; exactly the capacity for one repetition.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { shareForReps } from '@windlass/core/strength';
 * shareForReps(11, { kappa: 40, alpha: 1 }); // 0.8
 * shareForReps(1); // 1
 * ```
 */
export function shareForReps(reps: number, curve: RepCurve = generalCurve, capacity = 1): number {
  requireNumber('shareForReps', 'reps', reps, 1, 1000);
  requireNumber('shareForReps', 'kappa', curve.kappa, Number.MIN_VALUE);
  requireNumber('shareForReps', 'alpha', curve.alpha, 0.25, 2);
  requireNumber('shareForReps', 'capacity', capacity, Number.MIN_VALUE, 1);
  const more = reps - 1;
  const { kappa, alpha } = curve;
  if (more === 0) return capacity;
  if (alpha === 1) return (kappa * capacity) / (kappa + more);
  if (alpha === 0.5) {
    const root =
      (2 * kappa * capacity) / (more + Math.sqrt(more * more + 4 * kappa * kappa * capacity));
    return root * root;
  }
  return halve(more, curve, capacity);
}

/** Bisection on ln(share): `kappa * (capacity - share) - more * share^alpha` falls with the share. */
function halve(more: number, { kappa, alpha }: RepCurve, capacity: number): number {
  let low = Math.min(Math.log(capacity / 2), Math.log((kappa * capacity) / (2 * more)) / alpha);
  let high = Math.log(capacity);
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2;
    const share = Math.exp(middle);
    if (kappa * (capacity - share) > more * share ** alpha) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}
