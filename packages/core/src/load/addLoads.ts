import { requireNumber } from '../basis/index.ts';
import { LARGEST_LOAD, type Load } from './Load.ts';

/**
 * The exact sum of loads; 0 of none. Kilogram and pound loads mix freely, and a negative load
 * (assistance) is taken off.
 *
 * @throws RangeError when the sum is beyond the range of loads, -45 t to 45 t.
 * @example
 * ```ts
 * import { addLoads, kg, lb, toKg } from '@windlass/core/load';
 * const sleeve = addLoads(kg(20), lb(45), lb(2.5));
 * toKg(addLoads(kg(20), sleeve, sleeve)); // 103.09127515
 * ```
 */
export function addLoads(...loads: readonly Load[]): Load {
  let sum = 0;
  for (const load of loads) {
    sum += load;
    requireNumber('addLoads', 'sum in steps', sum, -LARGEST_LOAD, LARGEST_LOAD);
  }
  return sum as Load;
}
