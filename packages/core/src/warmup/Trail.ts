import type { ReachableLoad } from '../equipment/index.ts';
import type { Load } from '../load/index.ts';
import { jumpGrows } from './rampCosts.ts';

/** Loadings of the steps so far, last first. */
export interface Chain {
  readonly way: ReachableLoad;
  readonly previous?: Chain;
}

/** One way to have come to a loading. */
export interface Trail {
  /** Load of the step before; -Infinity at the first step. */
  readonly before: number;
  readonly cost: number;
  readonly chain: Chain;
}

/** How jumps are judged. */
export interface JumpRule {
  readonly work: Load;
  readonly growthCost: number;
}

/**
 * Trails that no other beats: of two to the same loading, one with the lighter step before never
 * has more growing jumps ahead, so a heavier one is only kept when it is cheaper.
 */
export function keepBest(trails: readonly Trail[]): readonly Trail[] {
  if (trails.length < 2) return trails;
  const sorted = trails.toSorted((a, b) => a.before - b.before || a.cost - b.cost);
  let cheapest = Number.POSITIVE_INFINITY;
  return sorted.filter(({ cost }) => {
    const better = cost < cheapest;
    if (better) cheapest = cost;
    return better;
  });
}

/** The cheapest trail to a loading of `at` for going on to `next`, and what it costs then. */
export function cheapestTrail(
  trails: readonly Trail[],
  at: Load,
  next: Load,
  { work, growthCost }: JumpRule,
): { readonly trail: Trail | undefined; readonly cost: number } {
  let best: Trail | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const trail of trails) {
    const cost = trail.cost + (jumpGrows(trail.before, at, next, work) ? growthCost : 0);
    if (cost < least) {
      best = trail;
      least = cost;
    }
  }
  return { trail: best, cost: least };
}
