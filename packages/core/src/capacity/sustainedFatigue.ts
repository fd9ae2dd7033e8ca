import { requireNumber } from '../basis/index.ts';
import type { FatigueRates } from './FatigueRates.ts';
import { jointFatigueRates } from './jointFatigueRates.ts';

/** A load that is carried, and how tired its muscles are. */
export interface SustainedInput {
  /** Load as a share of the fresh strength in this kind of work (holding, lowering), 0 to 1.5. */
  readonly targetLoad: number;
  /** Fatigued share at the start, 0 (fresh) to 1. */
  readonly fatigued: number;
  /** Rates of the joint that works; the general fit when left out. */
  readonly rates?: FatigueRates;
}

/**
 * The fatigued share after holding a load still, or lowering it, for some seconds.
 *
 * The three-compartment model (Xia and Frey Law 2008) under a load that is carried:
 * `mf' = F·load − R·mf`, solved exactly: `mf(t) = mf∞ + (mf0 − mf∞)·e^(−R·t)` with
 * `mf∞ = F·load / R`. It leaves out the tenths of a second in which force builds up.
 *
 * @param seconds 0 or more. Zero changes nothing.
 * @returns fatigued share of fresh strength. Past the time to failure it goes on as if the load
 *   were still carried: ask `sustainedSeconds` first.
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { sustainedFatigue } from '@windlass/core/capacity';
 * sustainedFatigue({ targetLoad: 0.5, fatigued: 0 }, 0); // 0
 * sustainedFatigue({ targetLoad: 0.5, fatigued: 0 }, 60).toFixed(3); // '0.283'
 * ```
 */
export function sustainedFatigue(
  { targetLoad, fatigued, rates = jointFatigueRates.general }: SustainedInput,
  seconds: number,
): number {
  requireNumber('sustainedFatigue', 'targetLoad', targetLoad, 0, 1.5);
  requireNumber('sustainedFatigue', 'fatigued', fatigued, 0);
  requireNumber('sustainedFatigue', 'seconds', seconds, 0);
  const { fatiguePerSecond, recoveryPerSecond } = rates;
  const end = (fatiguePerSecond * targetLoad) / recoveryPerSecond;
  return fatigued + (end - fatigued) * -Math.expm1(-recoveryPerSecond * seconds);
}
