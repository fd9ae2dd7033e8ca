import { exactSteps } from './exactSteps.ts';
import type { Load } from './Load.ts';

/**
 * An exact load from kilograms.
 *
 * @param value kilograms, a decimal of at most 11 places, from -45,000 to 45,000; negative for
 * assistance.
 * @throws RangeError for a value that is not finite, too large, or finer than 1e-11 kg.
 * @example
 * ```ts
 * import { addLoads, kg, lb, toKg } from '@windlass/core/load';
 * toKg(addLoads(kg(20), lb(45), lb(45))); // 60.8233133
 * ```
 */
export function kg(value: number): Load {
  return exactSteps('kg', value, 'kg');
}
