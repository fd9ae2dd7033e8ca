import { requireNumber } from '../basis/index.ts';
import { requireReps } from './requireReps.ts';
import type { SetTiming } from './SetTiming.ts';
import { secondsPerSet } from './secondsPerSet.ts';
import type { Tempo } from './Tempo.ts';

/** The pace of a set that was timed as a whole, or that nothing was done. */
export type PaceComparison =
  | { readonly kind: 'nothing-done' }
  | {
      readonly kind: 'compared';
      readonly askedSeconds: number;
      readonly doneSeconds: number;
      /** Done ÷ asked: below 1 is faster than asked. */
      readonly share: number;
      /** Seconds of the set for each repetition, as done. */
      readonly secondsPerRep: number;
    };

/**
 * A set timed with a stopwatch against the tempo that was asked for.
 *
 * @param reps repetitions done, a whole number from 0 to 1000; 0 give `nothing-done`.
 * @param doneSeconds seconds of the whole set, 0 to 7200, with the last pause or without, as
 * `timing` says.
 * @throws RangeError for other reps or seconds, or a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { comparePace } from '@windlass/core/tempo';
 * const squat = { lowerSeconds: 4, pauseAfterLowerSeconds: 2, liftSeconds: 1, pauseAfterLiftSeconds: 0 };
 * comparePace(squat, 8, 42, { lastPause: 'counted' });
 * // { kind: 'compared', askedSeconds: 56, doneSeconds: 42, share: 0.75, secondsPerRep: 5.25 }
 * ```
 */
export function comparePace(
  asked: Tempo,
  reps: number,
  doneSeconds: number,
  timing: SetTiming,
): PaceComparison {
  requireReps('comparePace', reps);
  requireNumber('comparePace', 'doneSeconds', doneSeconds, 0, 7200);
  const askedSeconds = secondsPerSet(asked, reps, timing);
  if (reps === 0) return { kind: 'nothing-done' };
  return {
    kind: 'compared',
    askedSeconds,
    doneSeconds,
    share: doneSeconds / askedSeconds,
    secondsPerRep: doneSeconds / reps,
  };
}
