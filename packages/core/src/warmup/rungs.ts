import type { ReachableLoad } from '../equipment/index.ts';
import type { Load } from '../load/index.ts';

/** A load with its loadings, the one of fewest pieces first. */
export interface Rung {
  readonly load: Load;
  readonly ways: readonly ReachableLoad[];
}

/** Loadings gathered by load, in their order. */
export function rungsOf(ways: readonly ReachableLoad[]): readonly Rung[] {
  const byLoad = new Map<Load, ReachableLoad[]>();
  for (const way of ways) {
    const known = byLoad.get(way.load);
    if (known) known.push(way);
    else byLoad.set(way.load, [way]);
  }
  return [...byLoad].map(([load, sameLoad]) => ({ load, ways: sameLoad }));
}
