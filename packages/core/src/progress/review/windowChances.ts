import type { ReachableLoad } from '../../equipment/index.ts';
import { forecastReps } from '../../strength/index.ts';
import type { WindowChance } from '../LoadAdvice.ts';
import type { NextLoadQuestion } from '../NextLoadQuestion.ts';

/** A chance with the count that is likely. */
export interface LoadForecast extends WindowChance {
  /** Likely repetitions, those left on purpose taken off. */
  readonly likelyReps: number;
}

/**
 * For each load, the chances that a set as planned ends before, inside and beyond the window; empty
 * without a posterior. Repetitions left on purpose move the window of failure up by as many.
 */
export function windowChances(
  { posterior, window, repsInReserve = 0, secondsPerRep }: NextLoadQuestion,
  loads: readonly ReachableLoad[],
): readonly LoadForecast[] {
  if (posterior === undefined) return [];
  return loads.map(({ load }) => {
    const pace = secondsPerRep === undefined ? {} : { secondsPerRep };
    const { chances, reps } = forecastReps(posterior, { load, ...pace });
    const sum = (from: number, to: number) =>
      chances.slice(from, to).reduce((total, chance) => total + chance, 0);
    const [from, to] = [window.minReps + repsInReserve, window.maxReps + repsInReserve + 1];
    return {
      before: sum(0, from),
      inside: sum(from, to),
      beyond: sum(to, chances.length),
      likelyReps: reps.likely - repsInReserve,
    };
  });
}
