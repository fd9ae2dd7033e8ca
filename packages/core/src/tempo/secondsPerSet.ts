import { requireReps } from './requireReps.ts';
import type { SetTiming } from './SetTiming.ts';
import { secondsOf, setMilliseconds } from './setMilliseconds.ts';
import type { Tempo } from './Tempo.ts';

/**
 * Seconds that a set takes, from the first cue to the end of the last phase.
 *
 * reps × seconds per repetition, less the last pause where it is left out; exact to the millisecond.
 *
 * @param reps a whole number from 0 to 1000; 0 reps take 0 seconds.
 * @throws RangeError for other reps, or a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { secondsPerSet } from '@windlass/core/tempo';
 * const squat = { lowerSeconds: 4, pauseAfterLowerSeconds: 1, liftSeconds: 2, pauseAfterLiftSeconds: 1 };
 * secondsPerSet(squat, 10, { lastPause: 'counted' }); // 80
 * secondsPerSet(squat, 10, { lastPause: 'left-out' }); // 79
 * ```
 */
export function secondsPerSet(tempo: Tempo, reps: number, timing: SetTiming): number {
  requireReps('secondsPerSet', reps);
  return secondsOf(setMilliseconds('secondsPerSet', tempo, timing), reps);
}
