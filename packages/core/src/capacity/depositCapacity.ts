import type { CapacityState, MuscleShares } from './CapacityState.ts';
import { SLOW_SHARE } from './capacityRates.ts';
import { shareWeights } from './shareWeights.ts';

/**
 * Takes `amount` of an exercise's capacity and spreads it over its muscles in proportion to their
 * shares, so that the exercise's own capacity falls by exactly `amount`. A negative amount is
 * recovery under a light load: it comes out of the fast part only and stops when that is empty.
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
    const { fast, slow } = state[muscle] ?? { fast: 0, slow: 0 };
    const part = (amount * weight) / spread;
    next[muscle] =
      part < 0
        ? { fast: Math.max(0, fast + part), slow }
        : { fast: fast + (1 - SLOW_SHARE) * part, slow: slow + SLOW_SHARE * part };
  }
  return next;
}
