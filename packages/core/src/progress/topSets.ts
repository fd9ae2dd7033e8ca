import type { Load } from '../load/index.ts';
import type { LiftSession, SessionSet } from './LiftSession.ts';

/** The work of a session: its sets at its heaviest load. */
export interface TopSets {
  /** What had to be moved. */
  readonly load: Load;
  /** What was read off or counted up. */
  readonly shown: Load;
  /** Never empty. */
  readonly sets: readonly [SessionSet, ...SessionSet[]];
  /** Repetitions of the set with the fewest. */
  readonly fewest: number;
}

/** The sets of a session at its heaviest load; lighter sets led up to them or followed. */
export function topSets({ sets }: LiftSession): TopSets {
  const { load, shown } = sets.reduce((top, set) => (set.load > top.load ? set : top));
  const top = sets.filter((set) => set.shown === shown) as [SessionSet, ...SessionSet[]];
  return { load, shown, sets: top, fewest: Math.min(...top.map(({ reps }) => reps)) };
}

/** Body weight may move the load of a session by so much before it counts as another. */
const BODY_WEIGHT_SHARE = 0.02;

/** Whether two sessions had the same top load: the same number, moved by body weight at most a little. */
export function haveSameLoad(a: TopSets, b: TopSets): boolean {
  return a.shown === b.shown && Math.abs(a.load - b.load) <= BODY_WEIGHT_SHARE * b.load;
}
