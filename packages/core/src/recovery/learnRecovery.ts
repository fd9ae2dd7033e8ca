import { normalBelow, requireNumber } from '../basis/index.ts';
import type { RecoveryHabit } from './hoursUntilReady.ts';
import { recoveryModel } from './recoveryModel.ts';

/** How the first hard set for a muscle went, some time after that muscle was last trained. */
export interface PerformanceReport {
  /** Hours of elapsed time since the muscle was last trained, more than 0. */
  readonly hoursSince: number;
  /** The likely hours until ready that were expected of anyone then, more than 0. */
  readonly hoursExpected: number;
  readonly reps: number;
  /** Repetitions that the forecast held likely for a rested muscle. */
  readonly repsForecast: number;
}

/**
 * How much slower or faster than most people someone recovers, from how sessions went.
 *
 * Within one repetition of the forecast a muscle counts as ready (Korak 2015; repeated sets differ
 * by 0.7 to 1.1 repetitions, Mitter 2022): it was ready within those hours, otherwise not yet. Each
 * report moves a normal belief about the shift of ln hours (standard deviation 0.44 before any) by
 * the probability of what was seen; computed on a grid.
 *
 * @param reports in any order; empty leaves the belief as it was.
 * @returns the mean of the shift and its standard deviation.
 * @throws RangeError for hours of 0 or less, or repetitions below 0.
 * @example
 * ```ts
 * import { learnRecovery } from '@windlass/core/recovery';
 * const late = { hoursSince: 72, hoursExpected: 43, reps: 6, repsForecast: 9 };
 * learnRecovery([late, late]).shift > 0; // true
 * learnRecovery([]).shift; // 0
 * ```
 */
export function learnRecovery(reports: readonly PerformanceReport[]): RecoveryHabit {
  const { betweenPeople, fromTimeToTime } = recoveryModel.spread;
  if (reports.length === 0) return { shift: 0, shiftSd: betweenPeople };
  const readings = reports.map((report) => {
    requireNumber('learnRecovery', 'hoursSince', report.hoursSince, Number.MIN_VALUE);
    requireNumber('learnRecovery', 'hoursExpected', report.hoursExpected, Number.MIN_VALUE);
    requireNumber('learnRecovery', 'reps', report.reps, 0);
    requireNumber('learnRecovery', 'repsForecast', report.repsForecast, 0);
    const late = Math.log(report.hoursSince / report.hoursExpected);
    return { late, wasReady: report.reps >= report.repsForecast - 1 };
  });
  let [total, first, second] = [0, 0, 0];
  for (let step = -STEPS; step <= STEPS; step += 1) {
    const shift = (step / STEPS) * REACH * betweenPeople;
    const seen = readings.reduce((product, { late, wasReady }) => {
      const z = (late - shift) / fromTimeToTime;
      return product * Math.max(1e-9, normalBelow(wasReady ? z : -z));
    }, 1);
    const weight = seen * Math.exp(-((shift / betweenPeople) ** 2) / 2);
    total += weight;
    first += weight * shift;
    second += weight * shift * shift;
  }
  const shift = first / total;
  return { shift, shiftSd: Math.sqrt(second / total - shift * shift) };
}

/** Half the grid, and how far it reaches in standard deviations. */
const STEPS = 60;
const REACH = 4;
