import { changeLoading, type ReachableLoad } from '../equipment/index.ts';
import { type StackTree, stackTree } from './StackTree.ts';

/** The cheapest way into a loading: its cost, and which loading it starts from. */
export interface CheapestChange {
  readonly cost: number;
  readonly from: number;
}

/**
 * For each loading of `to` the cheapest of `from`: cost there plus pieces handled times
 * `pieceCost`, exactly.
 */
export type ChangeFinder = (
  from: readonly ReachableLoad[],
  costs: readonly number[],
  to: readonly ReachableLoad[],
) => readonly CheapestChange[];

/** A finder for these loadings: on the tree of stacks where there is one, else pair by pair. */
export function changeFinder(ways: readonly ReachableLoad[], pieceCost: number): ChangeFinder {
  const tree = stackTree(ways);
  return tree === undefined ? pairByPair(pieceCost) : onTree(tree, pieceCost * tree.sides);
}

/**
 * Every stack on the way from a loading to the empty one learns what it costs to strip down to it;
 * a loading is then built up from the cheapest stack on its own way. Linear in the plates.
 */
function onTree(tree: StackTree, plateCost: number): ChangeFinder {
  const strippedTo = new Float64Array(tree.size).fill(Number.POSITIVE_INFINITY);
  const startedFrom = new Int32Array(tree.size);
  const pathOf = (way: ReachableLoad) => tree.paths.get(way) ?? [];
  return (from, costs, to) => {
    const touched: number[] = [];
    for (const [index, way] of from.entries()) {
      const path = pathOf(way);
      for (const [depth, node] of path.entries()) {
        const cost = (costs[index] ?? 0) + plateCost * (path.length - 1 - depth);
        if (cost >= (strippedTo[node] ?? 0)) continue;
        strippedTo[node] = cost;
        startedFrom[node] = index;
        touched.push(node);
      }
    }
    const found = to.map((way) => {
      const path = pathOf(way);
      let best = { cost: Number.POSITIVE_INFINITY, from: 0 };
      for (const [depth, node] of path.entries()) {
        const cost = (strippedTo[node] ?? 0) + plateCost * (path.length - 1 - depth);
        if (cost < best.cost) best = { cost, from: startedFrom[node] ?? 0 };
      }
      return best;
    });
    for (const node of touched) strippedTo[node] = Number.POSITIVE_INFINITY;
    return found;
  };
}

function pairByPair(pieceCost: number): ChangeFinder {
  const known = new Map<ReachableLoad, Map<ReachableLoad, number>>();
  const pieces = (start: ReachableLoad, end: ReachableLoad): number => {
    const ends = known.get(start) ?? new Map<ReachableLoad, number>();
    known.set(start, ends);
    const counted = ends.get(end) ?? changeLoading(start.loading, end.loading).pieces;
    ends.set(end, counted);
    return counted;
  };
  return (from, costs, to) =>
    to.map((way) => {
      let best = { cost: Number.POSITIVE_INFINITY, from: 0 };
      for (const [index, start] of from.entries()) {
        const cost = (costs[index] ?? 0) + pieceCost * pieces(start, way);
        if (cost < best.cost) best = { cost, from: index };
      }
      return best;
    });
}
