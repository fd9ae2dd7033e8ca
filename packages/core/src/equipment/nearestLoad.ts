import type { Load } from '../load/index.ts';
import { chooseLoad } from './chooseLoad.ts';
import type { LoadChoice } from './LoadChoice.ts';
import type { ReachableLoads } from './Loading.ts';

/**
 * The load nearest to the one that is wanted; exactly half way it is the lighter one, every time.
 *
 * @param loads the answer of `reachableLoads`; its `none` is passed on.
 * @returns `exact`; `near` with the difference and the reason, such as a bar heavier than the
 * target or more than the gym can make; `none` only when there are no loads at all.
 * @example
 * ```ts
 * import { nearestLoad, reachableLoads } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * const loads = reachableLoads(
 *   { kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } },
 *   { plates: [{ weight: { value: 2.5, unit: 'kg' }, pieces: 2 }] },
 * );
 * const choice = nearestLoad(loads, kg(22.5));
 * choice.kind === 'near' ? [toKg(choice.chosen.load), choice.reason] : []; // [20, 'between-two-loads']
 * ```
 */
export function nearestLoad(loads: ReachableLoads, target: Load): LoadChoice {
  return chooseLoad('nearestLoad', loads, target, (below, above) => {
    if (below === undefined || above === undefined) return below ?? above;
    return target - below.load <= above.load - target ? below : above;
  });
}
