import { type Band, requireNumber } from '../basis/index.ts';
import { marginOf, quantileAlong } from './grid/quantileAlong.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';

/**
 * The lifter's endurance constant on the lift at 3 seconds a repetition, as a band.
 *
 * @param level probability that the band holds, 0.01 to 0.999.
 * @throws RangeError outside this range.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { generalCurve, kappaBand, priorFor, strengthFrom } from '@windlass/core/strength';
 * const belief = strengthFrom({
 *   sets: [{ load: kg(100), reps: 5, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
 *   prior: priorFor(generalCurve),
 *   today: 0,
 * });
 * belief.kind === 'posterior' && Math.round(kappaBand(belief).likely); // 38
 * ```
 */
export function kappaBand(posterior: StrengthPosterior, level = 0.8): Band {
  requireNumber('kappaBand', 'level', level, 0.01, 0.999);
  const { lnMax, lnKappa } = posterior;
  const margin = marginOf(posterior.usual, lnMax.count, 'rows');
  const at = (share: number) => Math.exp(quantileAlong(margin, lnKappa, share));
  return { low: at((1 - level) / 2), likely: at(0.5), high: at((1 + level) / 2), level };
}
