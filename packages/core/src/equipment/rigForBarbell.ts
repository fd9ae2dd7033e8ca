import type { Barbell, EquipmentUse } from './Equipment.ts';
import { emptyBar } from './emptyBar.ts';
import { platePosts } from './platePosts.ts';
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
    sleeveMm: bar.sleeveMm,
    loadOf: (mass) => mass,
    shownOf: (mass) => mass,
  };
}
