import { requireNumber } from '../basis/index.ts';
import { phaseMilliseconds } from './phaseMilliseconds.ts';
import { phasesFrom } from './phases.ts';
import { requireReps } from './requireReps.ts';
import type { RepTiming, Tempo, TempoPhase } from './Tempo.ts';

/** One count to say, sound or show. */
export interface Cue {
  /** Seconds after the first repetition starts; negative in the lead-in. */
  readonly atSeconds: number;
  /**
   * Seconds until the next count: 1, except that the last count of a phase takes what is left,
   * from 0.5 to 1.5, or all of a phase shorter than that.
   */
  readonly lastsSeconds: number;
  readonly phase: TempoPhase | 'lead-in';
  /** The repetition, from 1; 0 in the lead-in. */
  readonly rep: number;
  /** The count inside the phase, from 1: a count of 1 is where the phase starts. */
  readonly count: number;
  /** How many counts the phase has. */
  readonly counts: number;
}

/** Every count of a set, in order, and when the set is over. */
export interface CueTimeline {
  readonly cues: readonly Cue[];
  /** When the last phase ends, the last pause included; 0 of no repetitions. */
  readonly endSeconds: number;
}

/** What is counted. */
export interface CueTimelineOptions extends RepTiming {
  /** A whole number from 0 to 1000. */
  readonly reps: number;
  /** Seconds counted in before the first repetition, 0 to 60; 0 when left out. */
  readonly leadInSeconds?: number;
}

/**
 * The counts of a set at a tempo: one a second from the start of each phase.
 *
 * Time 0 is the start of the first repetition, whatever the lead-in. A phase of 0 s makes no cue;
 * a fast lift is one count of the seconds it counts for. Times are sums of whole milliseconds, so
 * the hundredth repetition is as exact as the first, and `endSeconds` equals
 * {@link secondsPerSet} with the last pause counted.
 *
 * @throws RangeError for other reps or lead-in, or a tempo that {@link checkTempo} refuses.
 * @example
 * ```ts
 * import { cueTimeline } from '@windlass/core/tempo';
 * const chinUp = { lowerSeconds: 3, pauseAfterLowerSeconds: 0, liftSeconds: 'X', pauseAfterLiftSeconds: 0 } as const;
 * const { cues, endSeconds } = cueTimeline(chinUp, { reps: 6, startsWith: 'lift', leadInSeconds: 3 });
 * cues[0]; // { atSeconds: -3, lastsSeconds: 1, phase: 'lead-in', rep: 0, count: 1, counts: 3 }
 * cues.filter((cue) => cue.phase === 'lower' && cue.count === 1).map((cue) => cue.atSeconds); // [1, 5, 9, 13, 17, 21]
 * endSeconds; // 24
 * ```
 */
export function cueTimeline(tempo: Tempo, options: CueTimelineOptions): CueTimeline {
  const { reps, startsWith = 'lower', leadInSeconds = 0 } = options;
  requireReps('cueTimeline', reps);
  requireNumber('cueTimeline', 'leadInSeconds', leadInSeconds, 0, 60);
  const milliseconds = phaseMilliseconds('cueTimeline', tempo, options);
  const leadIn = Math.round(leadInSeconds * 1000);
  const cues = countsOf('lead-in', 0, -leadIn, leadIn);
  let start = 0;
  for (let rep = 1; rep <= reps; rep++) {
    for (const phase of phasesFrom(startsWith)) {
      cues.push(...countsOf(phase, rep, start, milliseconds[phase]));
      start += milliseconds[phase];
    }
  }
  return { cues, endSeconds: start / 1000 };
}

/** A count a second from `start`, the last of them 0.5 to 1.5 s long. All in whole milliseconds. */
function countsOf(phase: Cue['phase'], rep: number, start: number, length: number): Cue[] {
  const counts = length === 0 ? 0 : Math.max(1, Math.round(length / 1000));
  return Array.from({ length: counts }, (_, index) => ({
    atSeconds: (start + index * 1000) / 1000,
    lastsSeconds: (index + 1 < counts ? 1000 : length - index * 1000) / 1000,
    phase,
    rep,
    count: index + 1,
    counts,
  }));
}
