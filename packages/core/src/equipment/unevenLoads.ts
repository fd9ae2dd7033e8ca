import { requireNumber } from '../basis/index.ts';
import { addLoads, type Load } from '../load/index.ts';
import type { Barbell, EquipmentUse, Plate } from './Equipment.ts';
import { emptyBar } from './emptyBar.ts';
import type { NoLoads, PlateLoading, ReachableLoad } from './Loading.ts';
import { micrometres } from './micrometres.ts';
import { TOO_MANY_LOADS } from './noLoads.ts';
import { rigKinds } from './rigKinds.ts';
import { type UnevenWay, unevenWays } from './unevenWays.ts';

/** A load whose two ends may differ. */
export interface UnevenLoad extends ReachableLoad {
  /** Left end less right end, 0 or more: the left end is the heavier one. */
  readonly sideDifference: Load;
}

/** All loads, lightest first, never empty. */
export interface UnevenLoadList {
  readonly kind: 'loads';
  readonly loads: readonly UnevenLoad[];
}

/**
 * Every load that a bar can make when its ends may differ: odd pieces count too.
 *
 * For each total it gives the loading with the fewest pieces; of equal ones the one with the
 * smaller difference between the ends. Heavy plates are inside, the heavier end is the left one.
 *
 * @param mostSideDifference the ends may differ by so much, 0 or more. With 0 the ends weigh the
 * same but need not look the same: 20 on one end, 10 + 10 on the other.
 * @returns `none` when the plates make more ways than are kept (100,000).
 * @throws RangeError as `reachableLoads` does, and for a difference below 0.
 * @example
 * ```ts
 * import { unevenLoads } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * const answer = unevenLoads(
 *   { kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } },
 *   { plates: [{ weight: { value: 10, unit: 'kg' }, pieces: 2 }, { weight: { value: 1.25, unit: 'kg' }, pieces: 1 }] },
 *   kg(1.25),
 * );
 * answer.kind === 'loads' ? answer.loads.map(({ load }) => toKg(load)) : []; // [20, 21.25, 40, 41.25]
 * ```
 */
export function unevenLoads(
  bar: Barbell,
  use: EquipmentUse,
  mostSideDifference: Load,
): UnevenLoadList | NoLoads {
  requireNumber('unevenLoads', 'mostSideDifference in steps', mostSideDifference, 0);
  const kinds = rigKinds(bar.plates ?? use.plates ?? [], 1);
  const ways = unevenWays(
    kinds.map(({ mass, groups, plate }) => ({
      weight: mass,
      pieces: groups,
      room: micrometres(plate.thicknessMm ?? 0),
      plate,
    })),
    mostSideDifference,
    bar.sleeveMm === undefined ? Number.POSITIVE_INFINITY : micrometres(bar.sleeveMm),
  );
  if (ways === undefined) return TOO_MANY_LOADS;
  const best = ways
    .toSorted((a, b) => a.mass - b.mass || a.pieces - b.pieces || a.tilt - b.tilt)
    .filter(({ mass }, i, sorted) => mass !== sorted[i - 1]?.mass);
  const loads = best.map((way) => {
    const load = addLoads(emptyBar(bar), way.mass as Load);
    const loading = writeLoading(way);
    return { load, shown: load, loading, sideDifference: way.tilt as Load };
  });
  return { kind: 'loads', loads };
}

function writeLoading(way: UnevenWay): PlateLoading {
  const ends: [Plate[], Plate[]] = [[], []];
  let [first, second] = ends;
  for (let { last } = way; last !== undefined; { last } = last.before) {
    if (last.turned) [first, second] = [second, first];
    first.unshift(...new Array<Plate>(last.pieces[0]).fill(last.plate));
    second.unshift(...new Array<Plate>(last.pieces[1]).fill(last.plate));
  }
  return {
    kind: 'plates',
    stacks: [
      { place: 'left', plates: ends[0] },
      { place: 'right', plates: ends[1] },
    ],
    pieces: way.pieces,
  };
}
