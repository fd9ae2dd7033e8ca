import { exactSteps } from './exactSteps.ts';
import { type Load, STEPS_PER_KG } from './Load.ts';

/**
 * An exact load from kilograms.
 *
 * @param value kilograms, a decimal of at most 11 places, up to 90,000; negative for assistance.
 * @throws RangeError for a value that is not finite, too large, or finer than 1e-11 kg.
 * @example
 * ```ts
 * import { kg, lb, toKg } from '@windlass/core/load';
 * toKg((kg(20) + 2 * lb(45)) as Load); // 60.8233133
 * ```
 */
export function kg(value: number): Load {
  return exactSteps('kg', value, STEPS_PER_KG);
}
