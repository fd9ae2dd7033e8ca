import { addLoads, type Load, loadFromValue } from '../load/index.ts';
import type { Barbell, EquipmentUse } from './Equipment.ts';
import { platePosts, sleeveLimit } from './platePosts.ts';
import type { Rig } from './Rig.ts';
import { rigKinds } from './rigKinds.ts';

/** A bar with collars, and pairs of plates. */
export function rigForBarbell(bar: Barbell, use: EquipmentUse): Rig {
  const collar = bar.collar === undefined ? (0 as Load) : loadFromValue(bar.collar);
  return {
    kind: 'rig',
    counts: 'total',
    standing: 'exact',
    notes: [],
    bases: [platePosts(addLoads(loadFromValue(bar.bar), collar, collar), ['left', 'right'])],
    kinds: rigKinds(bar.plates ?? use.plates ?? [], 2),
    piecesPerGroup: 2,
    ...sleeveLimit(bar),
    loadOf: (mass) => mass,
    shownOf: (mass) => mass,
  };
}
