import type { Load } from './Load.ts';
import type { LoadGrid } from './LoadGrid.ts';
import { stepsPastGrid } from './stepsPastGrid.ts';

/**
 * Whether a load lies exactly on a grid, by integer arithmetic.
 *
 * @throws RangeError for a step that is not more than 0.
 * @example
 * ```ts
 * import { isOnGrid, kg, scaleLoad } from '@windlass/core/load';
 * isOnGrid(scaleLoad(kg(175), 0.7), { step: kg(2.5) }); // true
 * isOnGrid(kg(62), { step: kg(5), start: kg(20) }); // false
 * ```
 */
export function isOnGrid(load: Load, grid: LoadGrid): boolean {
  return stepsPastGrid('isOnGrid', load, grid) === 0;
}
