import { requireNumber } from '../basis/index.ts';
import type { Load } from '../load/index.ts';
import type { NextLoad } from './LoadChoice.ts';
import type { ReachableLoads } from './Loading.ts';
import { noChoice, nothingHeavier } from './nearReasons.ts';

/**
 * The next heavier load than this one, whether or not this one can be made.
 *
 * @param loads the answer of `reachableLoads`; its `none` is passed on.
 * @returns `next`, or `none` with the reason when nothing heavier can be made.
 * @example
 * ```ts
 * import { nextUp, reachableLoads } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * const loads = reachableLoads({
 *   kind: 'stack', id: 'pulldown', name: 'Pulldown', pulleyRatio: 2,
 *   first: { value: 5, unit: 'kg' }, rest: [{ weight: { value: 5, unit: 'kg' }, pieces: 9 }],
 * });
 * const next = nextUp(loads, kg(20));
 * next.kind === 'next' ? [toKg(next.chosen.shown), toKg(next.chosen.load)] : []; // [45, 22.5]
 * ```
 */
export function nextUp(loads: ReachableLoads, from: Load): NextLoad {
  requireNumber('nextUp', 'from in steps', from);
  if (loads.kind === 'none') return loads;
  const chosen = loads.loads.find(({ load }) => load > from);
  if (chosen !== undefined) return { kind: 'next', chosen };
  return noChoice(nothingHeavier(loads));
}
