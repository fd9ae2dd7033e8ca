import { requireNumber } from '../basis/index.ts';
import type { CapacityState, MuscleShares } from './CapacityState.ts';
import { depositCapacity } from './depositCapacity.ts';

/**
 * The state after some repetitions of an exercise.
 *
 * Each rep takes `costPerRep` from the exercise's capacity, spread over its muscles in proportion
 * to their shares; a fifth of it stays for the session (`SLOW_SHARE`), the rest comes back
 * with rest. Reps are taken as done: ask `repsUntil` how many are possible.
 *
 * @param reps 0 or more; a part of a rep (the attempt that failed) counts by that part.
 * @param costPerRep capacity per rep, 0 or more, from `repCost`.
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { capacityFor, depositReps, freshCapacity } from '@windlass/core/capacity';
 * const after = depositReps(freshCapacity(), { quadriceps: 1 }, 5, 0.02);
 * capacityFor(after, { quadriceps: 1 }); // 0.9
 * after.quadriceps; // { fast: 0.08, slow: 0.02 }
 * ```
 */
export function depositReps(
  state: CapacityState,
  shares: MuscleShares,
  reps: number,
  costPerRep: number,
): CapacityState {
  requireNumber('depositReps', 'reps', reps, 0);
  requireNumber('depositReps', 'costPerRep', costPerRep, 0);
  return depositCapacity('depositReps', state, shares, reps * costPerRep);
}
