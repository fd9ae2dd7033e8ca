import { requireNumber } from '../basis/index.ts';
import type { Load } from '../load/index.ts';
import type { NextLoad } from './LoadChoice.ts';
import type { ReachableLoads } from './Loading.ts';
import { noChoice } from './nearReasons.ts';

/**
 * The next lighter load than this one, whether or not this one can be made.
 *
 * @param loads the answer of `reachableLoads`; its `none` is passed on.
 * @returns `next`, or `none` with the reason when nothing lighter can be made.
 * @example
 * ```ts
 * import { nextDown, reachableLoads } from '@windlass/core/equipment';
 * import { kg } from '@windlass/core/load';
 * const loads = reachableLoads({ kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } });
 * const next = nextDown(loads, kg(20));
 * next.kind === 'none' ? next.reason : ''; // 'lightest-is-heavier'
 * ```
 */
export function nextDown(loads: ReachableLoads, from: Load): NextLoad {
  requireNumber('nextDown', 'from in steps', from);
  if (loads.kind === 'none') return loads;
  const chosen = loads.loads.findLast(({ load }) => load < from);
  return chosen === undefined ? noChoice('lightest-is-heavier') : { kind: 'next', chosen };
}
