import type { CapacityState, MuscleShares } from './CapacityState.ts';
import { exerciseFatigue } from './exerciseFatigue.ts';

/**
 * What share of its fresh lifting strength an exercise has left: the share-weighted mean over
 * its muscles of `1 − fast − slow`.
 *
 * @param shares how strongly the exercise asks each muscle; only proportions count.
 * @returns 1 when fresh, falling as reps and holds are done. The mean of very unequal muscles can
 *   pass below 0 after very light work; nothing can be lifted then.
 * @throws RangeError for a negative share or when no muscle has one.
 * @example
 * ```ts
 * import { capacityFor } from '@windlass/core/capacity';
 * const afterCurls = { biceps: { fast: 0.24, slow: 0.06 } };
 * capacityFor(afterCurls, { biceps: 1 }); // 0.7
 * capacityFor(afterCurls, { lats: 1, biceps: 0.5 }); // 0.9
 * ```
 */
export function capacityFor(state: CapacityState, shares: MuscleShares): number {
  const { fast, slow } = exerciseFatigue(state, shares);
  return 1 - fast - slow;
}
