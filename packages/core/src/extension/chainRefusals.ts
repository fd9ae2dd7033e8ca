import { amountRefusals } from './amountRefusals.ts';
import type { ChainRefusal } from './ChainRefusal.ts';
import { orderRefusals } from './orderRefusals.ts';
import { permissionRefusals } from './permissionRefusals.ts';
import type { ChainSetting, Stage } from './Stage.ts';
import { setUpRefusals } from './setUpRefusals.ts';

/**
 * Everything that speaks against a chain: what is allowed to this person first, then the set-up,
 * the order of the stages, and their amounts.
 *
 * @returns empty when the chain can be offered.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { chainRefusals } from '@windlass/core/extension';
 * import { limitsFor } from '@windlass/core/safety';
 * const found = findExercise('chin-up');
 * const setting = found.kind === 'found' && {
 *   exercise: found.exercise,
 *   partner: false,
 *   stops: false,
 *   limits: limitsFor({}),
 *   switchedOn: true,
 * };
 * setting && chainRefusals([{ kind: 'lift' }, { kind: 'assisted', reps: 1 }], setting)[0]?.code; // 'extension.no-partner'
 * ```
 */
export function chainRefusals(
  stages: readonly Stage[],
  setting: ChainSetting,
): readonly ChainRefusal[] {
  return [
    ...permissionRefusals(stages, setting),
    ...setUpRefusals(stages, setting),
    ...orderRefusals(stages),
    ...amountRefusals(stages),
  ];
}
