import { requireNumber } from '../basis/index.ts';

/**
 * How many repetitions until lifting fails, from a given capacity: `1 + (capacity − threshold) / costPerRep`,
 * at least 0.
 *
 * A rep is done when the capacity at its start is no less than the threshold, so the whole reps
 * are the floor of the result. The fraction is the part of the failed attempt that was done; with
 * it counted, a set to failure always ends with `threshold − costPerRep` left. From fresh, with the
 * load as threshold, this is the rep curve.
 *
 * @param capacity share of fresh strength left, from `capacityFor`.
 * @param threshold share that the load asks for: its intensity, for lifting.
 * @param costPerRep capacity per rep, above 0.
 * @returns reps, not rounded; below 1 when not even one can be finished.
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { repsUntil } from '@windlass/core/capacity';
 * repsUntil(1, 0.8, 0.02); // 11
 * repsUntil(0.9, 0.8, 0.02); // 6
 * repsUntil(0.7, 0.8, 0.02); // 0
 * ```
 */
export function repsUntil(capacity: number, threshold: number, costPerRep: number): number {
  requireNumber('repsUntil', 'capacity', capacity, undefined, 1);
  requireNumber('repsUntil', 'threshold', threshold, 0);
  requireNumber('repsUntil', 'costPerRep', costPerRep, Number.MIN_VALUE);
  return Math.max(0, 1 + (capacity - threshold) / costPerRep);
}
