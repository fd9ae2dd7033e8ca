import type { Equipment, EquipmentUse } from './Equipment.ts';
import type { ReachableLoad, ReachableLoads } from './Loading.ts';
import type { LoadRange } from './LoadRange.ts';
import { nothingInRange } from './noLoads.ts';
import { rigFor } from './rigFor.ts';
import { solveRig } from './solveRig.ts';

/**
 * Every load that a piece of equipment can make, exactly and sorted, each with the loading that
 * needs the fewest pieces.
 *
 * Kilogram and pound plates mix. Both sleeves carry the same plates, so an odd piece stays on the
 * rack; heavy plates are inside. Between loadings of equally many pieces the one that takes the
 * least room on the sleeve is given, then the one on the heavier base (pin, dumbbell), then the one
 * with more of the heaviest plate. Pairs of dumbbells and handles are counted by the hand.
 *
 * @param use plates that the gym shares, one hand or two, the body weight of the day.
 * @returns the list, or `none` with the reason: a resistance that nobody knows, a body weight that
 * is missing, nothing in stock, no pair, no load inside the range, or more than 100,000 loads
 * (memory stays below some 40 MB).
 * @throws RangeError for weights that are not loads, pieces that are not 0 to 1000, and ratios or
 * angles out of range.
 * @example
 * ```ts
 * import { reachableLoads } from '@windlass/core/equipment';
 * import { toKg } from '@windlass/core/load';
 * const answer = reachableLoads(
 *   { kind: 'barbell', id: 'short-bar', name: 'Short bar', bar: { value: 15, unit: 'kg' } },
 *   { plates: [{ weight: { value: 10, unit: 'kg' }, pieces: 3 }, { weight: { value: 5, unit: 'lb' }, pieces: 2 }] },
 * );
 * answer.kind === 'loads' ? answer.loads.map(({ load }) => toKg(load)) : []; // [15, 19.5359237, 35, 39.5359237]
 * ```
 */
export function reachableLoads(
  equipment: Equipment,
  use: EquipmentUse = {},
  range: LoadRange = {},
): ReachableLoads {
  const rig = rigFor(equipment, use);
  if (rig.kind === 'none') return rig;
  const solved = solveRig(rig, range.heaviest);
  if (solved.kind === 'none') return solved;
  const { lightest = Number.NEGATIVE_INFINITY, heaviest = Number.POSITIVE_INFINITY } = range;
  const [first, ...others] = solved.loads.filter(
    ({ load }) => load >= lightest && load <= heaviest,
  );
  if (first === undefined) return nothingInRange(equipment);
  const loads: [ReachableLoad, ...ReachableLoad[]] = [solved.write(first)];
  for (const other of others) loads.push(solved.write(other));
  return { kind: 'loads', counts: rig.counts, standing: rig.standing, notes: rig.notes, loads };
}
