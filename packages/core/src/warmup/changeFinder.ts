import type { ReachableLoad } from '../equipment/index.ts';
import { piecesBetween } from './piecesBetween.ts';
import { type StackTree, stackTree } from './StackTree.ts';

/** The cheapest ways into loadings, in their order: what each costs, and which it starts from. */
export interface CheapestChanges {
  readonly costs: Float64Array;
  readonly from: Int32Array;
}

/**
 * For each loading of `to` the cheapest of `from`: cost there plus pieces handled times
 * `pieceCost`, exactly.
 */
export type ChangeFinder = (
  from: readonly ReachableLoad[],
  costs: ArrayLike<number>,
  to: readonly ReachableLoad[],
) => CheapestChanges;

/** A finder for these loadings: on the tree of stacks where there is one, else pair by pair. */
export function changeFinder(ways: readonly ReachableLoad[], pieceCost: number): ChangeFinder {
  const tree = stackTree(ways);
  return tree === undefined ? pairByPair(ways, pieceCost) : onTree(tree, pieceCost * tree.sides);
}

/**
 * Every stack on the way from a loading to the empty one learns what it costs to strip down to it;
 * a loading is then built up from the cheapest stack on its own way. Linear in the plates.
 */
function onTree(tree: StackTree, plateCost: number): ChangeFinder {
  const strippedTo = new Float64Array(tree.size).fill(Number.POSITIVE_INFINITY);
  const startedFrom = new Int32Array(tree.size);
  const touched = new Int32Array(tree.size);
  return (from, costs, to) => {
    let count = 0;
    for (let index = 0; index < from.length; index += 1) {
      const path = tree.pathOf(from[index]);
      let cost = costs[index] ?? 0;
      for (let depth = path.length - 1; depth >= 0; depth -= 1, cost += plateCost) {
        const node = path[depth] ?? 0;
        const before = strippedTo[node] ?? 0;
        // whoever came to this stack more cheaply has passed all that lie below it too
        if (cost >= before) break;
        if (before === Number.POSITIVE_INFINITY) touched[count++] = node;
        strippedTo[node] = cost;
        startedFrom[node] = index;
      }
    }
    const found = nothingFound(to.length);
    for (let place = 0; place < to.length; place += 1) {
      const path = tree.pathOf(to[place]);
      for (let depth = 0; depth < path.length; depth += 1) {
        const node = path[depth] ?? 0;
        const cost = (strippedTo[node] ?? 0) + plateCost * (path.length - 1 - depth);
        if (cost < (found.costs[place] ?? 0)) {
          found.costs[place] = cost;
          found.from[place] = startedFrom[node] ?? 0;
        }
      }
    }
    for (let at = 0; at < count; at += 1) strippedTo[touched[at] ?? 0] = Number.POSITIVE_INFINITY;
    return found;
  };
}

function pairByPair(ways: readonly ReachableLoad[], pieceCost: number): ChangeFinder {
  const placeOf = new Map(ways.map((way, place) => [way, place]));
  const pieces = piecesBetween(ways);
  return (from, costs, to) => {
    const found = nothingFound(to.length);
    const starts = from.map((way) => placeOf.get(way) ?? 0);
    for (let place = 0; place < to.length; place += 1) {
      const end = placeOf.get(to[place] as ReachableLoad) ?? 0;
      for (let index = 0; index < starts.length; index += 1) {
        const cost = (costs[index] ?? 0) + pieceCost * pieces(starts[index] ?? 0, end);
        if (cost < (found.costs[place] ?? 0)) {
          found.costs[place] = cost;
          found.from[place] = index;
        }
      }
    }
    return found;
  };
}

function nothingFound(length: number): CheapestChanges {
  return {
    costs: new Float64Array(length).fill(Number.POSITIVE_INFINITY),
    from: new Int32Array(length),
  };
}
