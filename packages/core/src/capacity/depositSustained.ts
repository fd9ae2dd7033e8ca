import { requireNumber } from '../basis/index.ts';
import type { CapacityState, MuscleShares } from './CapacityState.ts';
import { capacityFor } from './capacityFor.ts';
import { depositCapacity } from './depositCapacity.ts';
import type { FatigueRates } from './FatigueRates.ts';
import { jointFatigueRates } from './jointFatigueRates.ts';
import { sustainedFatigue } from './sustainedFatigue.ts';

/** A load held still or lowered, and for how long. */
export interface SustainedWork {
  /** Load as a share of the fresh strength in this kind of work, 0 to 1.5. */
  readonly targetLoad: number;
  readonly seconds: number;
  /** Rates of the joint that works; the general fit when left out. */
  readonly rates?: FatigueRates;
}

/**
 * The state after holding a load still, or lowering it, for some seconds: the exercise's fatigue
 * follows `sustainedFatigue`, spread over its muscles as reps are.
 *
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { capacityFor, depositSustained, freshCapacity } from '@windlass/core/capacity';
 * const hang = depositSustained(freshCapacity(), { grip: 1 }, { targetLoad: 0.5, seconds: 60 });
 * capacityFor(hang, { grip: 1 }).toFixed(3); // '0.717'
 * ```
 */
export function depositSustained(
  state: CapacityState,
  shares: MuscleShares,
  { targetLoad, seconds, rates = jointFatigueRates.general }: SustainedWork,
): CapacityState {
  requireNumber('depositSustained', 'seconds', seconds, 0);
  const before = 1 - capacityFor(state, shares);
  const after = sustainedFatigue({ targetLoad, fatigued: before, rates }, seconds);
  return depositCapacity('depositSustained', state, shares, after - before);
}
