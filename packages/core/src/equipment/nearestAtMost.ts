import type { Load } from '../load/index.ts';
import { chooseLoad } from './chooseLoad.ts';
import type { LoadChoice } from './LoadChoice.ts';
import type { ReachableLoads } from './Loading.ts';

/**
 * The heaviest load that is not above the one that is wanted: rounding down.
 *
 * @param loads the answer of `reachableLoads`; its `none` is passed on.
 * @returns `exact`, `near` with the reason, or `none` when the lightest load is heavier.
 * @example
 * ```ts
 * import { nearestAtMost, reachableLoads } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * const rack = [10, 12.5, 17.5].map((value) => ({ weight: { value, unit: 'kg' as const }, pieces: 2 }));
 * const loads = reachableLoads({ kind: 'fixed', form: 'dumbbell', id: 'rack', name: 'Rack', weights: rack });
 * const choice = nearestAtMost(loads, kg(17));
 * choice.kind === 'near' ? toKg(choice.chosen.load) : 0; // 12.5
 * ```
 */
export function nearestAtMost(loads: ReachableLoads, target: Load): LoadChoice {
  return chooseLoad('nearestAtMost', loads, target, (below) => below);
}
