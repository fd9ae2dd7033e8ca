import { type Band, requireNumber } from '../basis/index.ts';
import type { Load } from '../load/index.ts';
import { NINE_IN_TEN } from '../recovery/nineInTen.ts';
import {
  generalCurve,
  repsAtShare,
  type SourcedRepCurve,
  shareForReps,
} from '../strength/index.ts';

/** What the load of today has to give before the next one is near. */
export interface RepsBeforeStep {
  /** Repetitions with the load of today, over people with other endurance than the usual. */
  readonly reps: Band;
  /** The likely number as a whole. */
  readonly aim: number;
  /** Whether the load of today is so light against the next that no count foretells it. */
  readonly beyondCounting: boolean;
}

/** Above this many repetitions a count says little about strength. */
const MOST_COUNTED = 20;

/**
 * How many repetitions the load of today has to give before the next load gives as many as are
 * wanted, by the same rep curve as everywhere.
 *
 * @param from load of today, more than 0.
 * @param to next load, more than `from`.
 * @param reps wanted with the next load, 1 to 200.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { repsBeforeStep } from '@windlass/core/progress';
 * repsBeforeStep(kg(40), kg(45), 5).aim; // 10
 * repsBeforeStep(kg(2.5), kg(5), 8).beyondCounting; // true
 * ```
 */
export function repsBeforeStep(
  from: Load,
  to: Load,
  reps: number,
  curve: SourcedRepCurve = generalCurve,
): RepsBeforeStep {
  requireNumber('repsBeforeStep', 'from in steps', from, 1);
  requireNumber('repsBeforeStep', 'to in steps', to, from + 1);
  const at = (kappa: number) => {
    const bent = { ...curve, kappa };
    return repsAtShare((from / to) * shareForReps(reps, bent), bent);
  };
  const spread = Math.exp(NINE_IN_TEN * curve.kappaLogSd);
  const likely = at(curve.kappa);
  return {
    reps: { low: at(curve.kappa / spread), likely, high: at(curve.kappa * spread), level: 0.8 },
    aim: Math.round(likely),
    beyondCounting: likely > MOST_COUNTED,
  };
}
