import { type Band, requireNumber } from '../basis/index.ts';
import { marginOf, quantileAlong } from './grid/quantileAlong.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';

/**
 * The one-rep max in kilograms, as a band.
 *
 * With `usual` the strength that lasts; with `today` the strength of the posterior's day, with the
 * form of that day, so wider unless sets of today have shown it. Look at `binding` first: with
 * `floor-only` the high end is only what was believed before, with `ceiling-only` the low end.
 *
 * @param level probability that the band holds, 0.01 to 0.999.
 * @throws RangeError outside this range.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { generalCurve, oneRepMaxKg, priorFor, strengthFrom } from '@windlass/core/strength';
 * const belief = strengthFrom({
 *   sets: [{ load: kg(100), reps: 5, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
 *   prior: priorFor(generalCurve),
 *   today: 0,
 * });
 * belief.kind === 'posterior' && Math.round(oneRepMaxKg(belief).likely); // 111
 * ```
 */
export function oneRepMaxKg(
  posterior: StrengthPosterior,
  level = 0.8,
  when: 'usual' | 'today' = 'usual',
): Band {
  requireNumber('oneRepMaxKg', 'level', level, 0.01, 0.999);
  const { lnMax } = posterior;
  const margin = marginOf(posterior[when], lnMax.count, 'columns');
  const at = (share: number) => Math.exp(quantileAlong(margin, lnMax, share));
  return { low: at((1 - level) / 2), likely: at(0.5), high: at((1 + level) / 2), level };
}
