import type { CapacityState, MuscleFatigue, MuscleShares } from './CapacityState.ts';
import { shareWeights } from './shareWeights.ts';

/**
 * An exercise's fatigue: the share-weighted mean of its muscles', fast and slow apart.
 *
 * @returns zeros when fresh; `capacityFor` is 1 less their sum.
 * @throws RangeError for a negative share or when no muscle has one.
 * @example
 * ```ts
 * import { exerciseFatigue } from '@windlass/core/capacity';
 * exerciseFatigue({ biceps: { fast: 0.3, slow: 0.06 } }, { lats: 2, biceps: 1 }); // { fast: 0.1, slow: 0.02 }
 * ```
 */
export function exerciseFatigue(state: CapacityState, shares: MuscleShares): MuscleFatigue {
  let fast = 0;
  let slow = 0;
  for (const [muscle, weight] of shareWeights('exerciseFatigue', shares)) {
    const fatigue = state[muscle];
    if (!fatigue) continue;
    fast += weight * fatigue.fast;
    slow += weight * fatigue.slow;
  }
  return { fast, slow };
}
