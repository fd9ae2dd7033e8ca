import type { Load } from '../load/index.ts';
import type { StackPlace } from './Loading.ts';
import type { RigBase } from './Rig.ts';

/** A base whose plates go on one or several posts, the same on each. */
export function platePosts(mass: Load, places: readonly StackPlace[], takesKinds = true): RigBase {
  return {
    mass,
    pieces: 0,
    takesKinds,
    build: (plates, pieces) => ({
      kind: 'plates',
      stacks: places.map((place) => ({ place, plates })),
      pieces,
    }),
  };
}
