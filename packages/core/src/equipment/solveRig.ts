import type { Load } from '../load/index.ts';
import type { Plate } from './Equipment.ts';
import { type GroupSums, groupSums } from './groupSums.ts';
import type { Loading, NoLoads, ReachableLoad } from './Loading.ts';
import type { Rig, RigBase } from './Rig.ts';

/** A load of a rig before its loading is written out. */
export interface SolvedLoad {
  readonly load: Load;
  readonly mass: Load;
  readonly pieces: number;
  readonly room: number;
  readonly base: RigBase;
  /** Which sum of groups goes on the base. */
  readonly sum: number;
}

/** All loads of a rig, lightest first, each once, never empty. */
export interface SolvedRig {
  readonly kind: 'solved';
  readonly rig: Rig;
  readonly sums: GroupSums;
  readonly loads: readonly SolvedLoad[];
}

/** More loads than this are not listed. */
export const MOST_LOADS = 100_000;

/**
 * All loads of a rig up to `heaviest`, each in the way that needs the fewest pieces.
 * Of ways with equally many pieces: the one that takes the least room on the sleeve, then the one
 * on the heavier base (pin, dumbbell), then the one with more of the heaviest plate.
 */
export function solveRig(rig: Rig, heaviest = Number.POSITIVE_INFINITY): SolvedRig | NoLoads {
  if (rig.bases.length === 0) {
    return { kind: 'none', reason: 'nothing-in-stock', message: 'There is nothing in stock here.' };
  }
  const sums = groupSums(
    rig.kinds.map(({ mass, groups, plate }) => ({
      mass,
      groups,
      room: micrometres(plate.thicknessMm ?? 0),
    })),
    massLimit(rig, heaviest),
    rig.sleeveMm === undefined ? undefined : micrometres(rig.sleeveMm),
  );
  const taking = rig.bases.filter((base) => base.takesKinds).length;
  if (sums === undefined || taking * sums.size > MOST_LOADS) {
    return {
      kind: 'none',
      reason: 'too-many-loads',
      message: `These plates make more than ${MOST_LOADS} different loads. Ask for a smaller range, or leave out plates that nobody uses.`,
    };
  }
  const all = rig.bases.flatMap((base) => loadsOnBase(rig, base, sums)).sort(lighterThenBetter);
  return { kind: 'solved', rig, sums, loads: all.filter((at, i) => at.load !== all[i - 1]?.load) };
}

/** A solved load with its loading, as users see it. */
export function writeOut({ rig, sums }: SolvedRig, solved: SolvedLoad): ReachableLoad {
  return {
    load: solved.load,
    shown: rig.shownOf(solved.mass),
    ...(rig.rangeOf ? { range: rig.rangeOf(solved.mass) } : {}),
    loading: writeLoading(rig, sums, solved),
  };
}

function writeLoading(rig: Rig, sums: GroupSums, { base, sum, pieces }: SolvedLoad): Loading {
  const counts = base.takesKinds ? sums.countsAt(sum) : [];
  const plates: Plate[] = [];
  for (const [index, { plate }] of rig.kinds.entries()) {
    for (let piece = counts[index] ?? 0; piece > 0; piece -= 1) plates.push(plate);
  }
  return base.build(plates, pieces);
}

function loadsOnBase(rig: Rig, base: RigBase, sums: GroupSums): readonly SolvedLoad[] {
  return Array.from({ length: base.takesKinds ? sums.size : 1 }, (_, sum) => {
    const mass = (base.mass + sums.massAt(sum)) as Load;
    return {
      load: rig.loadOf(mass),
      mass,
      pieces: base.pieces + sums.groupsAt(sum) * rig.piecesPerGroup,
      room: sums.roomAt(sum),
      base,
      sum,
    };
  });
}

function lighterThenBetter(a: SolvedLoad, b: SolvedLoad): number {
  return a.load - b.load || a.pieces - b.pieces || a.room - b.room || b.base.mass - a.base.mass;
}

/** The largest sum that keeps the lightest base at or below `heaviest`, by bisection. */
function massLimit(rig: Rig, heaviest: number): number {
  const lightest = Math.min(...rig.bases.map((base) => base.mass));
  let high = rig.kinds.reduce((sum, kind) => sum + kind.groups * kind.mass, 0);
  if (rig.loadOf((lightest + high) as Load) <= heaviest) return high;
  let low = 0;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (rig.loadOf((lightest + middle) as Load) <= heaviest) low = middle;
    else high = middle;
  }
  return low;
}

function micrometres(millimetres: number): number {
  return Math.round(millimetres * 1000);
}
