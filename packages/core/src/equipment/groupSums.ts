import { type GroupSize, mergeWays } from './mergeWays.ts';
import { MOST_LOADS } from './noLoads.ts';
import { beforeKind, cell, nothingLoaded, type Ways } from './Ways.ts';

/** Equal pieces that go on together: a pair for two sleeves, one piece for one post. */
export interface GroupKind extends GroupSize {
  /** How many groups the stock gives. */
  readonly groups: number;
}

/** Every sum that groups can make, lightest first, and the best way to make each. */
export interface GroupSums {
  readonly size: number;
  readonly massAt: (index: number) => number;
  readonly groupsAt: (index: number) => number;
  /** Groups of each kind, in the order the kinds were given. */
  readonly countsAt: (index: number) => readonly number[];
}

/**
 * All sums of groups, exactly, by dynamic programming over the kinds from light to heavy.
 *
 * For each sum it keeps the way with the fewest groups; of equal ones the way that takes the least
 * room; of those the way with more of the heaviest kind, then of the next. Where the room limit
 * can bind it also keeps ways that need more groups but less room (the Pareto front), because only
 * such a way may leave room for what is added later.
 *
 * @param massLimit heavier sums are left out.
 * @param roomLimit ways that take more are left out.
 * @returns `undefined` when more than {@link MOST_LOADS} would have to be kept: memory stays below
 * 8 MB and 3 MB more for each kind. A gym with kilogram plates alone needs some hundreds, one with
 * a full second set in pounds some ten thousands.
 */
export function groupSums(
  kinds: readonly GroupKind[],
  massLimit = Number.POSITIVE_INFINITY,
  roomLimit = Number.POSITIVE_INFINITY,
): GroupSums | undefined {
  const lightFirst = kinds
    .map((kind, index) => ({ ...kind, index }))
    .sort((a, b) => a.mass - b.mass);
  const allRoom = kinds.reduce((sum, kind) => sum + kind.groups * kind.room, 0);
  const limits = { mass: massLimit, room: roomLimit, ways: MOST_LOADS, front: allRoom > roomLimit };
  const layers: { readonly index: number; readonly ways: Ways }[] = [];
  let ways = nothingLoaded();
  for (const kind of lightFirst) {
    const start = beforeKind(ways);
    ways = start;
    for (let group = 0; group < kind.groups; group += 1) {
      ways = mergeWays(start, ways, kind, limits);
      if (ways.size > MOST_LOADS) return undefined;
    }
    layers.push({ index: kind.index, ways });
  }
  return readSums(ways, layers);
}

function readSums(
  ways: Ways,
  layers: readonly { readonly index: number; readonly ways: Ways }[],
): GroupSums {
  const rows: number[] = [];
  for (let row = 0; row < ways.size; row += 1) {
    if (row === 0 || cell(ways.mass, row) !== cell(ways.mass, row - 1)) rows.push(row);
  }
  const rowAt = (index: number) => rows[index] ?? 0;
  return {
    size: rows.length,
    massAt: (index) => cell(ways.mass, rowAt(index)),
    groupsAt: (index) => cell(ways.groups, rowAt(index)),
    countsAt: (index) => {
      const counts: number[] = [];
      let row = rowAt(index);
      for (const layer of layers.toReversed()) {
        counts[layer.index] = cell(layer.ways.count, row);
        row = cell(layer.ways.before, row);
      }
      return counts;
    },
  };
}
