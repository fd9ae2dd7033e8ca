import { phaseMilliseconds } from './phaseMilliseconds.ts';
import { phasesFrom } from './phases.ts';
import type { RepTiming, Tempo, TempoPhase } from './Tempo.ts';

/** One phase of a repetition as it is done. */
export interface RepPhase {
  readonly phase: TempoPhase;
  /** More than 0. For a fast lift, the seconds it counts for. */
  readonly seconds: number;
  /** Whether this is a lift as fast as possible. */
  readonly isFast: boolean;
}

/**
 * The phases of one repetition in the order they happen, without those that take no time; the
 * first is the first cue. The written tempo is the same for a squat and a chin-up, only where the
 * repetition starts is not.
 *
 * @returns one to four phases.
 * @throws RangeError for a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { phasesOfRep } from '@windlass/core/tempo';
 * const tempo = { lowerSeconds: 3, pauseAfterLowerSeconds: 0, liftSeconds: 'X', pauseAfterLiftSeconds: 0 } as const;
 * phasesOfRep(tempo)[0]; // { phase: 'lower', seconds: 3, isFast: false }
 * phasesOfRep(tempo, { startsWith: 'lift' })[0]; // { phase: 'lift', seconds: 1, isFast: true }
 * ```
 */
export function phasesOfRep(tempo: Tempo, timing: RepTiming = {}): readonly RepPhase[] {
  const milliseconds = phaseMilliseconds('phasesOfRep', tempo, timing);
  return phasesFrom(timing.startsWith ?? 'lower')
    .filter((phase) => milliseconds[phase] > 0)
    .map((phase) => ({
      phase,
      seconds: milliseconds[phase] / 1000,
      isFast: phase === 'lift' && tempo.liftSeconds === 'X',
    }));
}
