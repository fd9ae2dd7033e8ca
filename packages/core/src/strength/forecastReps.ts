import { type Band, requireNumber } from '../basis/index.ts';
import { toKg } from '../load/index.ts';
import { countBand } from './evidence/countBand.ts';
import { countChances } from './evidence/countChances.ts';
import { doubtsOf } from './evidence/doubtsOf.ts';
import type { ForecastDoubt } from './ForecastDoubt.ts';
import { oneRepMaxKg } from './oneRepMaxKg.ts';
import type { SetConditions } from './PerformedSet.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';

/** What a set to failure will give. */
export interface RepForecast {
  /** Whole repetitions before failure. */
  readonly reps: Band;
  /** Probability of exactly 0, 1, 2, … repetitions; sums to 1. */
  readonly chances: readonly number[];
  /** Seconds under load until failure; none when the pace is not known. */
  readonly setSeconds: Band | undefined;
  /** Load as a share of today's one-rep max. */
  readonly share: Band;
  /** Why this is less sure than it looks; `forecastDoubts` has the words. */
  readonly doubts: readonly ForecastDoubt[];
}

/**
 * How many repetitions a load will give to failure on the posterior's day.
 *
 * Every pair of one-rep max and kappa that is still believed has its count by the rep curve, spread
 * by the repeat error and by what the pace, lightness and tiredness add; this is their mixture. So
 * the band widens below half of the one-rep max, at an unknown pace and outside 2 to 10 s a
 * repetition, and `doubts` says so.
 *
 * @param set load above 0; seconds a repetition 0.2 to 120; capacity above 0 to 1, fresh when left out.
 * @param level probability that the bands hold, 0.01 to 0.999.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { generalCurve, forecastReps, priorFor, strengthFrom } from '@windlass/core/strength';
 * const belief = strengthFrom({
 *   sets: [{ load: kg(100), reps: 5, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
 *   prior: priorFor(generalCurve),
 *   today: 0,
 * });
 * const set = { load: kg(90), secondsPerRep: 3 };
 * belief.kind === 'posterior' && forecastReps(belief, set).reps.likely; // 9
 * ```
 */
export function forecastReps(
  posterior: StrengthPosterior,
  set: SetConditions,
  level = 0.8,
): RepForecast {
  requireNumber('forecastReps', 'load', set.load, 1);
  requireNumber('forecastReps', 'secondsPerRep', set.secondsPerRep ?? 3, 0.2, 120);
  requireNumber('forecastReps', 'capacity', set.capacity ?? 1, Number.MIN_VALUE, 1);
  const plane = { columns: posterior.lnMax, rows: posterior.lnKappa };
  const chances = countChances(set, plane, posterior.today, posterior.alpha);
  const reps = countBand(chances, level);
  const max = oneRepMaxKg(posterior, level, 'today');
  const kg = toKg(set.load);
  return {
    reps,
    chances,
    setSeconds: set.secondsPerRep === undefined ? undefined : scaled(reps, set.secondsPerRep),
    share: { low: kg / max.high, likely: kg / max.likely, high: kg / max.low, level },
    doubts: doubtsOf(posterior, set, { oneRepMaxKg: max.likely, reps: reps.likely }),
  };
}

function scaled({ low, likely, high, level }: Band, factor: number): Band {
  return { low: low * factor, likely: likely * factor, high: high * factor, level };
}
