import { addLoads, type Load, loadFromValue } from '../load/index.ts';
import type { Barbell, EquipmentUse } from './Equipment.ts';
import { platePosts, sleeveLimit } from './platePosts.ts';
import type { Rig } from './Rig.ts';
import { rigKinds } from './rigKinds.ts';

/** A bar with collars, and pairs of plates. */
export function rigForBarbell(bar: Barbell, use: EquipmentUse): Rig {
  return {
    kind: 'rig',
    counts: 'total',
    standing: 'exact',
    notes: [],
    bases: [platePosts(emptyBar(bar), ['left', 'right'])],
    kinds: rigKinds(bar.plates ?? use.plates ?? [], 2),
    piecesPerGroup: 2,
    ...sleeveLimit(bar),
    loadOf: (mass) => mass,
    shownOf: (mass) => mass,
  };
}

/** The bar with its two collars. */
export function emptyBar({ bar, collar }: Barbell): Load {
  const each = collar === undefined ? (0 as Load) : loadFromValue(collar);
  return addLoads(loadFromValue(bar), each, each);
}
