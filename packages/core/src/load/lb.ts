import { exactSteps } from './exactSteps.ts';
import { type Load, STEPS_PER_LB } from './Load.ts';

/**
 * An exact load from international pounds (0.45359237 kg each).
 *
 * @param value pounds, a decimal of at most 3 places, up to 198,000; negative for assistance.
 * @throws RangeError for a value that is not finite, too large, or finer than 0.001 lb.
 */
export function lb(value: number): Load {
  return exactSteps('lb', value, STEPS_PER_LB);
}
