import type { Load } from '../load/index.ts';
import type { LiftSession, SessionSet } from './LiftSession.ts';

/** The work of a session: its sets at its heaviest load. */
export interface TopSets {
  readonly load: Load;
  readonly sets: readonly SessionSet[];
  /** Repetitions of the set with the fewest. */
  readonly fewest: number;
}

/** The sets of a session at its heaviest load; lighter sets led up to them or followed. */
export function topSets({ sets }: LiftSession): TopSets {
  const load = Math.max(...sets.map((set) => set.load)) as Load;
  const top = sets.filter((set) => set.load === load);
  return { load, sets: top, fewest: Math.min(...top.map(({ reps }) => reps)) };
}
