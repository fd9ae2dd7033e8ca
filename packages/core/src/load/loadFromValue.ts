import { exactSteps } from './exactSteps.ts';
import type { Load, LoadValue } from './Load.ts';

/**
 * The exact load of a value with its unit.
 *
 * @throws RangeError as {@link kg} and {@link lb} do.
 * @example
 * ```ts
 * import { loadFromValue, toKg } from '@windlass/core/load';
 * toKg(loadFromValue({ value: 2.5, unit: 'lb' })); // 1.133980925
 * ```
 */
export function loadFromValue({ value, unit }: LoadValue): Load {
  return exactSteps('loadFromValue', value, unit);
}
