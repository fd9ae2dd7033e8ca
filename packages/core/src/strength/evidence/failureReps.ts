import { evidenceFigures } from '../evidenceFigures.ts';

/** A reading of where failure would have been: a count and the doubt of the report. */
export interface FailureReading {
  readonly reps: number;
  readonly doubt: number;
}

/** Where a set stopped with some left would have failed: the report, plus the 0.95 people leave out. */
export function failureReps(reps: number, repsLeft: number): FailureReading {
  const { bias, spread, spreadPerRepLeft, spreadPerRepAbove12 } = evidenceFigures.reserve;
  const total = reps + repsLeft + bias;
  return {
    reps: total,
    doubt: spread + spreadPerRepLeft * repsLeft + spreadPerRepAbove12 * Math.max(0, total - 12),
  };
}
