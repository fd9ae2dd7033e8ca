import { loadFromValue } from '../load/index.ts';
import type { AdjustableHandles, EquipmentUse } from './Equipment.ts';
import type { NoLoads } from './Loading.ts';
import { platePosts } from './platePosts.ts';
import type { Rig } from './Rig.ts';
import { rigKinds } from './rigKinds.ts';

const ONE_HANDLE = ['first-handle-left', 'first-handle-right'] as const;
const TWO_HANDLES = [...ONE_HANDLE, 'second-handle-left', 'second-handle-right'] as const;

/** Handles with the same plates on every end; the load is that of one hand. */
export function rigForHandles(handles: AdjustableHandles, use: EquipmentUse): Rig | NoLoads {
  const hands = use.hands ?? 2;
  if (hands > handles.handles) {
    return {
      kind: 'none',
      reason: 'no-pair',
      message: `There is one handle of ${handles.name}, so it can only be used in one hand.`,
    };
  }
  const places = hands === 2 ? TWO_HANDLES : ONE_HANDLE;
  return {
    kind: 'rig',
    counts: 'each-hand',
    standing: 'exact',
    notes: [],
    bases: [platePosts(loadFromValue(handles.handle), places)],
    kinds: rigKinds(handles.plates ?? use.plates ?? [], places.length, 2),
    piecesPerGroup: places.length,
    sleeveMm: handles.sleeveMm,
    loadOf: (mass) => mass,
    shownOf: (mass) => mass,
  };
}
