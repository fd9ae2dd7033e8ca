import type { ReachableLoad } from '@windlass/core/equipment';
import { type Load, scaleLoad } from '@windlass/core/load';

/** The loads that a search looks at, and how they were picked. */
export interface TrialLoads {
  readonly loads: readonly [ReachableLoad, ...ReachableLoad[]];
  readonly heaviest: Load;
  /** Where many were left: only those with at most so many pieces to carry. */
  readonly mostPieces: number | null;
}

/** A step is at most twice the last load; a little beyond it shows what lies there. */
const BEYOND = 2.2;
/** Nobody needs finer steps to find a first load, and no phone is kept waiting. */
const ENOUGH = 16;

/** The loads up to just over twice the heaviest that was tried; of very many, those of few pieces. */
export function trialLoads(
  all: readonly [ReachableLoad, ...ReachableLoad[]],
  tried: readonly Load[],
): TrialLoads {
  const [lightest, ...others] = all;
  const heaviest = scaleLoad(Math.max(lightest.load, ...tried) as Load, BEYOND);
  const inReach = others.filter(({ load }) => load <= heaviest);
  const within = (most: number) => inReach.filter(({ loading }) => loading.pieces <= most);
  const counts = [...new Set(inReach.map(({ loading }) => loading.pieces))].sort((a, b) => b - a);
  if (inReach.length < ENOUGH) return { loads: withLightest(inReach), heaviest, mostPieces: null };
  const mostPieces = counts.find((most) => within(most).length < ENOUGH) ?? counts.at(-1) ?? 0;
  return { loads: withLightest(within(mostPieces)), heaviest, mostPieces };

  function withLightest(some: readonly ReachableLoad[]): TrialLoads['loads'] {
    return [lightest, ...some];
  }
}
