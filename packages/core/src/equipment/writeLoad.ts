import type { Load } from '../load/index.ts';
import type { Loading, ReachableLoad } from './Loading.ts';
import type { Rig } from './Rig.ts';

/** A mass on a rig as the load that users see. */
export function writeLoad(rig: Rig, mass: Load, loading: Loading): ReachableLoad {
  return {
    load: rig.loadOf(mass),
    shown: rig.shownOf(mass),
    ...(rig.rangeOf ? { range: rig.rangeOf(mass) } : {}),
    loading,
  };
}
