import type { Load } from '../load/index.ts';
import { type GroupSums, groupSums } from './groupSums.ts';
import type { NoLoads, ReachableLoad } from './Loading.ts';
import { MOST_LOADS, NOTHING_IN_STOCK, TOO_MANY_LOADS } from './noLoads.ts';
import { platesOf } from './platesOf.ts';
import type { Rig, RigBase } from './Rig.ts';
import { rigGroups } from './rigGroups.ts';
import { sumUpTo } from './sumUpTo.ts';
import { writeLoad } from './writeLoad.ts';

/** A load of a rig before its loading is written out. */
export interface SolvedLoad {
  readonly load: Load;
  readonly mass: Load;
  readonly pieces: number;
  readonly base: RigBase;
  /** Which sum of groups goes on the base. */
  readonly sum: number;
}

/** All loads of a rig, lightest first, each once, never empty. */
export interface SolvedRig {
  readonly kind: 'solved';
  readonly loads: readonly SolvedLoad[];
  /** A load with its loading, as users see it. */
  readonly write: (solved: SolvedLoad) => ReachableLoad;
}

/**
 * All loads of a rig up to `heaviest`, each in the way that needs the fewest pieces.
 * Of ways with equally many pieces: the one that takes the least room on the sleeve, then the one
 * on the heavier base (pin, dumbbell), then the one with more of the heaviest plate.
 */
export function solveRig(rig: Rig, heaviest = Number.POSITIVE_INFINITY): SolvedRig | NoLoads {
  if (rig.bases.length === 0) return NOTHING_IN_STOCK;
  const lightest = Math.min(...rig.bases.map((base) => base.mass)) as Load;
  const { kinds, roomLimit } = rigGroups(rig);
  const sums = groupSums(kinds, Math.max(0, sumUpTo(rig, lightest, heaviest)), roomLimit);
  const taking = rig.bases.filter((base) => base.takesKinds).length;
  if (sums === undefined || taking * sums.size > MOST_LOADS) return TOO_MANY_LOADS;
  const all = rig.bases.flatMap((base) => loadsOnBase(rig, base, sums)).sort(lighterThenBetter);
  return {
    kind: 'solved',
    loads: all.filter((at, i) => at.load !== all[i - 1]?.load),
    write: ({ base, sum, mass, pieces }) =>
      writeLoad(rig, mass, base.build(platesOf(rig, sums.countsAt(sum)), pieces)),
  };
}

function loadsOnBase(rig: Rig, base: RigBase, sums: GroupSums): readonly SolvedLoad[] {
  return Array.from({ length: base.takesKinds ? sums.size : 1 }, (_, sum) => {
    const mass = (base.mass + sums.massAt(sum)) as Load;
    return {
      load: rig.loadOf(mass),
      mass,
      pieces: base.pieces + sums.groupsAt(sum) * rig.piecesPerGroup,
      base,
      sum,
    };
  });
}

function lighterThenBetter(a: SolvedLoad, b: SolvedLoad): number {
  return a.load - b.load || a.pieces - b.pieces || b.base.mass - a.base.mass;
}
