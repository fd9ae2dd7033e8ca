import type { Band } from '../basis/index.ts';
import {
  evidenceModel,
  type ForecastDoubt,
  forecastReps,
  type PerformedSet,
  type StrengthPosterior,
} from '../strength/index.ts';

/** A set that was done beside what was expected of it. */
export interface ExpectedAndDone {
  /** Repetitions to failure that the belief before the set held likely. */
  readonly expected: Band;
  /** Repetitions to failure that the set speaks for: done, and left. */
  readonly done: number;
  /** `above` or `below`: outside the band. A floor (stopped at a target) is never below. */
  readonly standing: 'below' | 'as-expected' | 'above' | 'floor-only';
  /** Probability of so few repetitions or fewer. */
  readonly chanceOfSoFew: number;
  readonly doubts: readonly ForecastDoubt[];
}

/**
 * How a set went against what was expected of it before it was done.
 *
 * One set outside the band is no news by itself: of ten sets two lie outside a band of 0.8.
 *
 * @param posterior the belief before the set, brought to its day.
 * @throws RangeError for a load of 0 or less, and as `forecastReps` does.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { expectedAgainstDone } from '@windlass/core/progress';
 * import { generalCurve, priorFor, strengthFrom } from '@windlass/core/strength';
 * const set = { load: kg(60), reps: 8, end: { kind: 'failure' }, day: 0 } as const;
 * const belief = strengthFrom({ sets: [set], prior: priorFor(generalCurve), today: 3 });
 * belief.kind === 'posterior' && expectedAgainstDone(belief, { ...set, day: 3 }).standing; // 'as-expected'
 * ```
 */
export function expectedAgainstDone(
  posterior: StrengthPosterior,
  set: PerformedSet,
  level = 0.8,
): ExpectedAndDone {
  const { reps: expected, chances, doubts } = forecastReps(posterior, set, level);
  const { end } = set;
  const left =
    end.kind === 'reserve'
      ? end.repsLeft + evidenceModel.reserve.value.bias
      : end.kind === 'more'
        ? end.atLeast
        : 0;
  const done = set.reps + left;
  const chanceOfSoFew = chances
    .slice(0, Math.floor(done) + 1)
    .reduce((sum, chance) => sum + chance, 0);
  const standing =
    done > expected.high
      ? 'above'
      : end.kind === 'more'
        ? 'floor-only'
        : done < expected.low
          ? 'below'
          : 'as-expected';
  return { expected, done, standing, chanceOfSoFew, doubts };
}
