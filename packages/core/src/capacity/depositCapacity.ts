import { addFatigue } from './addFatigue.ts';
import type { CapacityState, MuscleShares } from './CapacityState.ts';
import { shareWeights } from './shareWeights.ts';

/**
 * Takes `amount` of an exercise's capacity and spreads it over its muscles in proportion to their
 * shares, so that the exercise's own capacity falls by exactly `amount`.
 */
export function depositCapacity(
  where: string,
  state: CapacityState,
  shares: MuscleShares,
  amount: number,
): CapacityState {
  const weights = shareWeights(where, shares);
  const spread = weights.reduce((sum, [, weight]) => sum + weight * weight, 0);
  const next: Record<string, CapacityState[string]> = { ...state };
  for (const [muscle, weight] of weights) {
    next[muscle] = addFatigue(state[muscle] ?? { fast: 0, slow: 0 }, (amount * weight) / spread);
  }
  return next;
}
