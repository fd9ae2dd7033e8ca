import { requireNumber } from '../basis/index.ts';
import type { SourcedRepCurve } from './RepCurve.ts';
import type { StrengthPrior } from './StrengthPosterior.ts';

/** A one-rep max believed before any set, with its doubt as a share: 0.1 is about a tenth. */
export interface BelievedMax {
  readonly kg: number;
  readonly doubt: number;
}

/**
 * What to believe of a lifter before any set: the curve of the lift with its spread between people,
 * and a one-rep max if one is believed. Nothing is taken from body weight, age or sex.
 *
 * @param curve `generalCurve`, or a lift's from `repCurves`.
 * @param max kg above 0; doubt above 0 to 2, the standard deviation of its logarithm.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { generalCurve, priorFor } from '@windlass/core/strength';
 * priorFor(generalCurve).lnMax; // undefined
 * priorFor(generalCurve, { kg: 100, doubt: 0.2 }).lnMax?.sd; // 0.2
 * ```
 */
export function priorFor(curve: SourcedRepCurve, max?: BelievedMax): StrengthPrior {
  const lnKappa = { mean: Math.log(curve.kappa), sd: curve.kappaLogSd };
  if (max === undefined) return { lnKappa, alpha: curve.alpha };
  requireNumber('priorFor', 'kg', max.kg, Number.MIN_VALUE);
  requireNumber('priorFor', 'doubt', max.doubt, 1e-3, 2);
  return { lnMax: { mean: Math.log(max.kg), sd: max.doubt }, lnKappa, alpha: curve.alpha };
}
