import type { Load } from '../load/index.ts';
import { compareSides, type Sides } from './compareSides.ts';
import type { Equipment, EquipmentUse } from './Equipment.ts';
import { HELP_TOO_LARGE } from './equipmentNotes.ts';
import type { Counts, EquipmentNote, Loading, LoadStanding, NoLoads } from './Loading.ts';
import { massOfLoading } from './massOfLoading.ts';
import { rigFor } from './rigFor.ts';

/** What a loading comes to. The fields are those of `ReachableLoad` and `LoadList`. */
export interface WeighedLoading {
  readonly kind: 'weighed';
  readonly load: Load;
  readonly shown: Load;
  readonly range?: { readonly low: Load; readonly high: Load };
  readonly counts: Counts;
  readonly standing: LoadStanding;
  readonly notes: readonly EquipmentNote[];
  /** On a bar with two sleeves, and on a machine with two posts. */
  readonly sides?: Sides;
}

/**
 * What a loading comes to on a piece of equipment, whether or not the plates are in stock and
 * whether or not both ends carry the same. Every plate keeps its unit; only the sum is converted.
 *
 * @returns the load with its two ends compared, or `none` for a resistance that nobody knows or
 * help that leaves nothing to lift. Where the starting resistance is unknown, `standing` is `relative` and `shown` counts the plates.
 * Of two handles that differ, the mean.
 * @throws RangeError for a loading that this equipment cannot have.
 * @example
 * ```ts
 * import { weighLoading } from '@windlass/core/equipment';
 * import { toKg } from '@windlass/core/load';
 * const weighed = weighLoading(
 *   { kind: 'stack', id: 'row', name: 'Cable row', pulleyRatio: 2, first: { value: 5, unit: 'kg' }, rest: [] },
 *   { kind: 'pin', pin: { value: 40, unit: 'kg' }, addOns: [{ value: 2.5, unit: 'lb' }], pieces: 1 },
 * );
 * weighed.kind === 'weighed' ? [toKg(weighed.shown), toKg(weighed.load)] : []; // [41.133980925, 20.5669904625]
 * ```
 */
export function weighLoading(
  equipment: Equipment,
  loading: Loading,
  use: EquipmentUse = {},
): WeighedLoading | NoLoads {
  const rig = rigFor(equipment, use);
  if (rig.kind === 'none') return rig;
  const mass = massOfLoading(equipment, rig, loading);
  const load = rig.loadOf(mass);
  const range = rig.rangeOf?.(mass);
  if (mass < 0 && (range?.low ?? load) <= 0) return NOTHING_LEFT;
  const sides = compareSides(loading);
  return {
    kind: 'weighed',
    load,
    shown: rig.shownOf(mass),
    ...(range ? { range } : {}),
    counts: rig.counts,
    standing: rig.standing,
    notes: rig.notes,
    ...(sides ? { sides } : {}),
  };
}

const NOTHING_LEFT: NoLoads = {
  kind: 'none',
  reason: 'assistance-over-body-weight',
  message: HELP_TOO_LARGE,
};
