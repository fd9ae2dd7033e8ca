import { addLoads } from './addLoads.ts';
import type { Load } from './Load.ts';

/**
 * What is left of a load when another is taken off, exactly; negative when more is taken off.
 *
 * @throws RangeError when the result is beyond the range of loads, -45 t to 45 t.
 * @example
 * ```ts
 * import { kg, lb, subtractLoad, toKg } from '@windlass/core/load';
 * toKg(subtractLoad(lb(90), kg(40))); // 0.8233133
 * ```
 */
export function subtractLoad(load: Load, takenOff: Load): Load {
  return addLoads(load, (0 - takenOff) as Load);
}
