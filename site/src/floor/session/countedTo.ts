import { secondsPerRep } from '@windlass/core/tempo';
import type { FloorLift, FloorStep } from './FloorSession.ts';

/** No set is counted for longer. */
export const LONGEST_COUNT_SECONDS = 600;

/** Repetitions beyond the window that are still counted, for a set that turns out too light. */
const BEYOND_WINDOW = 20;

/** The repetition at which the count of a set ends by itself. A try ends at its count. */
export function countedTo({ kind, reps }: FloorStep, { window, tempo }: FloorLift): number {
  const wanted = kind === 'work' ? window.maxReps + BEYOND_WINDOW : reps;
  return Math.max(1, Math.min(wanted, Math.floor(LONGEST_COUNT_SECONDS / secondsPerRep(tempo))));
}
