import { phaseMilliseconds } from './phaseMilliseconds.ts';
import type { RepTiming, Tempo } from './Tempo.ts';

/**
 * Seconds from the start of one repetition to the start of the next: all four phases.
 *
 * @throws RangeError for a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { secondsPerRep } from '@windlass/core/tempo';
 * secondsPerRep({ lowerSeconds: 4, pauseAfterLowerSeconds: 1, liftSeconds: 2, pauseAfterLiftSeconds: 1 }); // 8
 * ```
 */
export function secondsPerRep(
  tempo: Tempo,
  timing: Pick<RepTiming, 'fastLiftSeconds'> = {},
): number {
  const phases = phaseMilliseconds('secondsPerRep', tempo, timing);
  return Object.values(phases).reduce((sum, milliseconds) => sum + milliseconds, 0) / 1000;
}
