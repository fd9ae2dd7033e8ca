import type { Load } from '../load/index.ts';
import { chooseLoad } from './chooseLoad.ts';
import type { LoadChoice } from './LoadChoice.ts';
import type { ReachableLoads } from './Loading.ts';

/**
 * The lightest load that is not below the one that is wanted: rounding up.
 *
 * @param loads the answer of `reachableLoads`; its `none` is passed on.
 * @returns `exact`, `near` with the reason, or `none` when even the heaviest load is lighter.
 * @example
 * ```ts
 * import { nearestAtLeast, reachableLoads } from '@windlass/core/equipment';
 * import { kg } from '@windlass/core/load';
 * const rack = [{ weight: { value: 10, unit: 'kg' as const }, pieces: 2 }, { weight: { value: 12, unit: 'kg' as const }, pieces: 2 }];
 * const loads = reachableLoads({ kind: 'fixed', form: 'kettlebell', id: 'rack', name: 'Rack', weights: rack });
 * const choice = nearestAtLeast(loads, kg(20));
 * choice.kind === 'none' ? choice.reason : ''; // 'heaviest-is-lighter'
 * ```
 */
export function nearestAtLeast(loads: ReachableLoads, target: Load): LoadChoice {
  return chooseLoad('nearestAtLeast', loads, target, (_, above) => above);
}
