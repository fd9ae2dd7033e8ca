import { requireNumber } from '../basis/index.ts';
import { jointFatigueRates } from './jointFatigueRates.ts';
import type { SustainedInput } from './sustainedFatigue.ts';

/** When a load that is held can no longer be held. */
export type SustainedSeconds =
  | { readonly kind: 'fails'; readonly seconds: number }
  /** Recovery keeps pace with fatigue: the model has no end for a load this light. */
  | { readonly kind: 'endless' };

/**
 * How long a load can be held still, or lowered, until less strength is left than it asks for.
 *
 * From fresh: `−ln(1 − R·(1 − load) / (F·load)) / R`, the published endurance time of the
 * three-compartment model; from a tired start the same with what is already lost taken off.
 * Against measured endurance times it lies within a factor of 2 from 20 to 80 % of maximal
 * strength and promises too little near maximal loads (about half at 90 %).
 *
 * @returns `fails` with seconds (0 when the load is already too much), or `endless` at or below
 *   the load `R/(F + R)` (6 to 9 % of strength).
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { sustainedSeconds } from '@windlass/core/capacity';
 * const half = sustainedSeconds({ targetLoad: 0.5, fatigued: 0 });
 * half.kind === 'fails' && half.seconds.toFixed(1); // '108.3'
 * sustainedSeconds({ targetLoad: 0.05, fatigued: 0 }).kind; // 'endless'
 * ```
 */
export function sustainedSeconds({
  targetLoad,
  fatigued,
  rates = jointFatigueRates.general,
}: SustainedInput): SustainedSeconds {
  requireNumber('sustainedSeconds', 'targetLoad', targetLoad, 0, 1.5);
  requireNumber('sustainedSeconds', 'fatigued', fatigued, 0);
  const { fatiguePerSecond, recoveryPerSecond } = rates;
  const spare = 1 - targetLoad - fatigued;
  if (spare <= 0) return { kind: 'fails', seconds: 0 };
  const gain = fatiguePerSecond * targetLoad - recoveryPerSecond * fatigued;
  if (gain <= recoveryPerSecond * spare) return { kind: 'endless' };
  return {
    kind: 'fails',
    seconds: -Math.log1p((-recoveryPerSecond * spare) / gain) / recoveryPerSecond,
  };
}
