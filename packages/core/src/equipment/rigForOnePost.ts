import { loadFromValue } from '../load/index.ts';
import type { EquipmentUse, OnePost } from './Equipment.ts';
import { platePosts } from './platePosts.ts';
import type { Rig } from './Rig.ts';
import { rigKinds } from './rigKinds.ts';

/** Plates one by one on one post. */
export function rigForOnePost(post: OnePost, use: EquipmentUse): Rig {
  const landmine = post.form === 'landmine';
  return {
    kind: 'rig',
    counts: 'total',
    standing: landmine ? 'estimate' : 'exact',
    notes: landmine
      ? [
          {
            code: 'equipment.landmine-angle',
            message:
              'A bar that turns about its far end weighs less in the hands the steeper it stands; the number is what the loaded end weighs when it is held level.',
          },
        ]
      : [],
    bases: [platePosts(loadFromValue(post.base), ['post'])],
    kinds: rigKinds(post.plates ?? use.plates ?? [], 1),
    piecesPerGroup: 1,
    sleeveMm: post.sleeveMm,
    loadOf: (mass) => mass,
    shownOf: (mass) => mass,
  };
}
