import type { ReachableLoad } from '../../equipment/index.ts';
import type { Load } from '../../load/index.ts';

/** A step in percent of the load of last time. */
export function stepTo(to: ReachableLoad, from: Load) {
  return { to, percent: (100 * (to.load - from)) / from };
}
