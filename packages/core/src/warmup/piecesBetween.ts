import {
  changeLoading,
  type FixedLoading,
  type Loading,
  type PinLoading,
  type ReachableLoad,
} from '../equipment/index.ts';
import { type LoadValue, loadFromValue } from '../load/index.ts';

/** Pieces handled from one of these loadings to another, by their places in the list. */
export type PiecesBetween = (from: number, to: number) => number;

/** A loading with loose parts: what is held or pinned, and its add-ons by kind. */
interface Loose {
  readonly held: number;
  readonly addOns: readonly number[];
  /** Pieces that each add-on is, and that picking up or pinning another weight takes. */
  readonly sides: number;
  readonly swap: 'pin' | 'hands';
}

/**
 * Counts the pieces between these loadings as `changeLoading` does, each pair once. Pins and
 * weights in the hand are counted without writing down the steps.
 */
export function piecesBetween(ways: readonly ReachableLoad[]): PiecesBetween {
  const loadings = ways.map(({ loading }) => loading);
  const known = new Float64Array(loadings.length ** 2).fill(-1);
  const count = counterFor(loadings);
  return (from, to) => {
    const place = from * loadings.length + to;
    const before = known[place] ?? -1;
    if (before >= 0) return before;
    const pieces = count(from, to);
    known[place] = pieces;
    return pieces;
  };
}

function counterFor(loadings: readonly Loading[]): PiecesBetween {
  if (!loadings.every(isLoose)) {
    return (from, to) =>
      changeLoading(loadings[from] ?? 'nothing', loadings[to] ?? 'nothing').pieces;
  }
  const kinds = new Map<number, number>();
  const loose = loadings.map((loading) => looseOf(loading, kinds));
  return (from, to) => looseBetween(loose[from] as Loose, loose[to] as Loose, kinds.size);
}

function isLoose(loading: Loading): loading is PinLoading | FixedLoading {
  return loading.kind === 'pin' || loading.kind === 'fixed';
}

function looseOf(loading: PinLoading | FixedLoading, kinds: Map<number, number>): Loose {
  const addOns = countsOf(loading.addOns, kinds);
  return loading.kind === 'pin'
    ? { held: loadFromValue(loading.pin), addOns, sides: 1, swap: 'pin' }
    : { held: loadFromValue(loading.weight), addOns, sides: loading.hands, swap: 'hands' };
}

function countsOf(weights: readonly LoadValue[], kinds: Map<number, number>): readonly number[] {
  const counts: number[] = [];
  for (const weight of weights) {
    const load = loadFromValue(weight);
    const kind = kinds.get(load) ?? kinds.size;
    kinds.set(load, kind);
    counts[kind] = (counts[kind] ?? 0) + 1;
  }
  return counts;
}

/** A pin moves alone; weights go back with their add-ons when others are picked up. */
function looseBetween(from: Loose, to: Loose, kinds: number): number {
  const sameHeld = from.held === to.held;
  let differing = 0;
  let all = 0;
  for (let kind = 0; kind < kinds; kind += 1) {
    const [before, after] = [from.addOns[kind] ?? 0, to.addOns[kind] ?? 0];
    differing += Math.abs(before - after);
    all += from.sides * before + to.sides * after;
  }
  if (from.swap === 'pin') return differing + (sameHeld ? 0 : 1);
  return sameHeld ? from.sides * differing : from.sides + to.sides + all;
}
