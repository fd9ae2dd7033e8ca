import { normalBelow, requireNumber } from '../basis/index.ts';
import type { StrengthTrend } from './strengthTrend.ts';

/**
 * The probability that strength rises by more than a rate.
 *
 * @param percentPerWeek above -100; negative asks for the chance that it falls by less than that.
 * @throws RangeError for -100 or less.
 * @example
 * ```ts
 * import { chanceOfRate } from '@windlass/core/progress';
 * const slope = { mean: 0.0007, sd: 0.0004 };
 * const percentPerWeek = { low: 0.1, likely: 0.5, high: 0.9, level: 0.8 };
 * const trend = { kind: 'trend', sessions: 8, percentPerWeek, line: [], chanceRising: 0.96, slope } as const;
 * chanceOfRate(trend, 0).toFixed(2); // '0.96'
 * chanceOfRate(trend, 1).toFixed(2); // '0.04'
 * ```
 */
export function chanceOfRate({ slope }: StrengthTrend, percentPerWeek: number): number {
  requireNumber('chanceOfRate', 'percentPerWeek', percentPerWeek, -99.999);
  const perDay = Math.log(1 + percentPerWeek / 100) / 7;
  return normalBelow((slope.mean - perDay) / slope.sd);
}
