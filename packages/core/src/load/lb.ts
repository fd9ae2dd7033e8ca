import { exactSteps } from './exactSteps.ts';
import type { Load } from './Load.ts';

/**
 * An exact load from international pounds (0.45359237 kg each).
 *
 * @param value pounds, a decimal of at most 3 places, up to 99,208 either way; negative for
 * assistance.
 * @throws RangeError for a value that is not finite, too large, or finer than 0.001 lb.
 * @example
 * ```ts
 * import { lb, toKg } from '@windlass/core/load';
 * toKg(lb(45)); // 20.41165665
 * ```
 */
export function lb(value: number): Load {
  return exactSteps('lb', value, 'lb');
}
