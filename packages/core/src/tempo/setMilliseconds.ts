import { phaseMilliseconds } from './phaseMilliseconds.ts';
import { pauseAtEnd, phasesFrom } from './phases.ts';
import type { SetTiming } from './SetTiming.ts';
import type { Tempo, TempoPause } from './Tempo.ts';

/** What a set of any length is made of: repetitions × `ofRep`, less `cutAtEnd`; whole milliseconds. */
export interface SetMilliseconds {
  readonly ofRep: number;
  /** The last pause where it is left out, otherwise 0. Shorter than a repetition. */
  readonly cutAtEnd: number;
}

/** The parts of a set's time, without the pauses that are not to count. */
export function setMilliseconds(
  where: string,
  tempo: Tempo,
  timing: SetTiming,
  withoutPauses: readonly TempoPause[] = [],
): SetMilliseconds {
  const milliseconds = { ...phaseMilliseconds(where, tempo, timing) };
  for (const pause of withoutPauses) milliseconds[pause] = 0;
  const { startsWith = 'lower', lastPause } = timing;
  return {
    ofRep: phasesFrom(startsWith).reduce((sum, phase) => sum + milliseconds[phase], 0),
    cutAtEnd: lastPause === 'left-out' ? milliseconds[pauseAtEnd(startsWith)] : 0,
  };
}

/** Seconds of a set of `reps`; 0 of none. */
export function secondsOf({ ofRep, cutAtEnd }: SetMilliseconds, reps: number): number {
  return reps === 0 ? 0 : (reps * ofRep - cutAtEnd) / 1000;
}
