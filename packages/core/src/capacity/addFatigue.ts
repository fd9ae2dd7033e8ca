import type { MuscleFatigue } from './CapacityState.ts';
import { SLOW_SHARE } from './capacityRates.ts';

/**
 * One muscle's, or one exercise's, fatigue after losing `amount` of its fresh strength: a fifth
 * stays for the session, the rest is fast. A negative amount is recovery under a light load: it
 * comes out of the fast part only and stops when that is empty.
 *
 * @param amount share of fresh strength; 0 changes nothing.
 * @example
 * ```ts
 * import { addFatigue } from '@windlass/core/capacity';
 * addFatigue({ fast: 0, slow: 0 }, 0.25); // { fast: 0.2, slow: 0.05 }
 * addFatigue({ fast: 0.1, slow: 0.05 }, -0.2); // { fast: 0, slow: 0.05 }
 * ```
 */
export function addFatigue({ fast, slow }: MuscleFatigue, amount: number): MuscleFatigue {
  if (amount < 0) return { fast: Math.max(0, fast + amount), slow };
  return { fast: fast + (1 - SLOW_SHARE) * amount, slow: slow + SLOW_SHARE * amount };
}
