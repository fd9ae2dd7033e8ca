import type { Band } from '@windlass/core/basis';
import { forecastReps } from '@windlass/core/strength';
import type { LogReviewResult } from './compute.ts';

/** Repetitions to failure with the advised load, by what is believed; nothing without a belief. */
export function repsAt({ advice, beliefs }: LogReviewResult): Band | undefined {
  const { next, paceSeconds } = beliefs;
  if (next === undefined || advice.kind === 'come-back') return undefined;
  const pace = paceSeconds === undefined ? {} : { secondsPerRep: paceSeconds };
  return forecastReps(next, { load: advice.load.load, ...pace }).reps;
}
