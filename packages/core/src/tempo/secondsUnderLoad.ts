import { requireReps } from './requireReps.ts';
import type { SetTiming } from './SetTiming.ts';
import { secondsOf, setMilliseconds } from './setMilliseconds.ts';
import type { Tempo, TempoPause } from './Tempo.ts';

/** How the seconds under load of a set are counted. */
export interface LoadTiming extends SetTiming {
  /**
   * Pauses in which the muscle is relieved: the pause after lifting where a squat stands on
   * straight legs, the pause after lowering where a deadlift stands on the floor. None when left
   * out: every second counts.
   */
  readonly restingPauses?: readonly TempoPause[];
}

/**
 * Seconds of a set in which the muscle carries the load: the set without the pauses that relieve it.
 *
 * @param reps a whole number from 0 to 1000; 0 reps take 0 seconds.
 * @throws RangeError for other reps, or a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { secondsUnderLoad } from '@windlass/core/tempo';
 * const deadlift = { lowerSeconds: 3, pauseAfterLowerSeconds: 2, liftSeconds: 1, pauseAfterLiftSeconds: 0 };
 * const timing = { startsWith: 'lift', lastPause: 'counted' } as const;
 * secondsUnderLoad(deadlift, 5, timing); // 30
 * secondsUnderLoad(deadlift, 5, { ...timing, restingPauses: ['pause-after-lower'] }); // 20
 * ```
 */
export function secondsUnderLoad(tempo: Tempo, reps: number, timing: LoadTiming): number {
  requireReps('secondsUnderLoad', reps);
  const parts = setMilliseconds('secondsUnderLoad', tempo, timing, timing.restingPauses);
  return secondsOf(parts, reps);
}
