import type { Load } from '../load/index.ts';
import type { Rig } from './Rig.ts';

/**
 * The largest sum of pieces on a base of this mass whose load is not above `limit`, by bisection;
 * -1 when the base alone is above it. `loadOf` of a rig rises with the mass.
 */
export function sumUpTo(rig: Rig, baseMass: Load, limit: number): number {
  const within = (sum: number) => rig.loadOf((baseMass + sum) as Load) <= limit;
  let high = rig.kinds.reduce((sum, kind) => sum + kind.groups * kind.mass, 0);
  if (within(high)) return high;
  let low = -1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (within(middle)) low = middle;
    else high = middle;
  }
  return low;
}
