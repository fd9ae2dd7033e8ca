import { requireNumber } from '../basis/index.ts';
import type { Load } from '../load/index.ts';
import type { Equipment, EquipmentUse } from './Equipment.ts';
import { everyGroupSum, type GroupSum } from './everyGroupSum.ts';
import type { NoLoads, ReachableLoad } from './Loading.ts';
import type { LoadRange } from './LoadRange.ts';
import { nothingInRange, TOO_MANY_LOADS } from './noLoads.ts';
import { platesOf } from './platesOf.ts';
import type { Rig, RigBase } from './Rig.ts';
import { rigFor } from './rigFor.ts';
import { rigGroups } from './rigGroups.ts';
import { solveRig } from './solveRig.ts';
import { sumUpTo } from './sumUpTo.ts';
import { writeLoad } from './writeLoad.ts';

/** Loadings, lightest first and then by pieces; a load may be there several times. Never empty. */
export interface LoadWays {
  readonly kind: 'ways';
  readonly ways: readonly ReachableLoad[];
}

/** More ways than this are not listed. */
const MOST_WAYS = 20_000;

/**
 * The different ways to make each load: every mirrored loading that needs at most `extraGroups`
 * groups of pieces (pairs on a bar) more than the fewest for its load. Where loads follow one
 * another, a loading with more pieces can save handling; `reachableLoads` gives one loading each.
 *
 * @param range which loads; all of them where an end is not given.
 * @param extraGroups 0 to 50; with 0 the loadings that tie for the fewest pieces.
 * @returns `none` as `reachableLoads` does, and when there are more than 20,000 ways.
 * @throws RangeError as `reachableLoads` does, and for `extraGroups` out of range.
 * @example
 * ```ts
 * import { waysToLoad } from '@windlass/core/equipment';
 * import { kg } from '@windlass/core/load';
 * const plates = [20, 10, 5].map((value) => ({ weight: { value, unit: 'kg' as const }, pieces: 4 }));
 * const bar = { kind: 'barbell' as const, id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' as const } };
 * const answer = waysToLoad(bar, { plates }, { lightest: kg(60), heaviest: kg(60) }, 2);
 * answer.kind === 'ways' ? answer.ways.map(({ loading }) => loading.pieces) : []; // [2, 4, 6]
 * ```
 */
export function waysToLoad(
  equipment: Equipment,
  use: EquipmentUse,
  range: LoadRange,
  extraGroups: number,
): LoadWays | NoLoads {
  requireNumber('waysToLoad', 'extraGroups', extraGroups, 0, 50);
  const rig = rigFor(equipment, use);
  if (rig.kind === 'none') return rig;
  const { lightest = Number.NEGATIVE_INFINITY, heaviest = Number.POSITIVE_INFINITY } = range;
  const solved = solveRig(rig, heaviest);
  if (solved.kind === 'none') return solved;
  const wanted = solved.loads.filter(({ load }) => load >= lightest && load <= heaviest);
  if (wanted.length === 0) return nothingInRange(equipment);
  const fewest = new Map(wanted.map(({ load, pieces }) => [load, pieces]));
  const extraPieces = extraGroups * rig.piecesPerGroup;
  const mostPieces = Math.max(...fewest.values()) + extraPieces;
  const ways: { readonly pieces: number; readonly load: ReachableLoad }[] = [];
  for (const base of rig.bases) {
    const sums = sumsOnBase(rig, base, { lightest, heaviest }, mostPieces);
    if (sums === undefined) return TOO_MANY_LOADS;
    for (const sum of sums) {
      const mass = (base.mass + sum.mass) as Load;
      const pieces = base.pieces + sum.groups * rig.piecesPerGroup;
      if (pieces > (fewest.get(rig.loadOf(mass)) ?? 0) + extraPieces) continue;
      const loading = base.build(platesOf(rig, sum.counts), pieces);
      ways.push({ pieces, load: writeLoad(rig, mass, loading) });
    }
    if (ways.length > MOST_WAYS) return TOO_MANY_LOADS;
  }
  ways.sort((a, b) => a.load.load - b.load.load || a.pieces - b.pieces);
  return { kind: 'ways', ways: ways.map(({ load }) => load) };
}

function sumsOnBase(
  rig: Rig,
  base: RigBase,
  { lightest, heaviest }: { readonly lightest: number; readonly heaviest: number },
  mostPieces: number,
): readonly GroupSum[] | undefined {
  const { kinds, roomLimit } = rigGroups(rig);
  const range = {
    leastMass: sumUpTo(rig, base.mass, lightest - 1) + 1,
    mostMass: sumUpTo(rig, base.mass, heaviest),
    mostRoom: roomLimit,
    mostGroups: Math.floor((mostPieces - base.pieces) / rig.piecesPerGroup),
  };
  return everyGroupSum(base.takesKinds ? kinds : [], range, 10 * MOST_WAYS);
}
