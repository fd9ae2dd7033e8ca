import { type Load, STEPS_PER_LB } from './Load.ts';

/**
 * Pounds as the nearest decimal number, for models and drawings; exact loads stay in steps.
 *
 * @example
 * ```ts
 * import { kg, toLb } from '@windlass/core/load';
 * toLb(kg(20)); // 44.09245
 * ```
 */
export function toLb(load: Load): number {
  return load / STEPS_PER_LB;
}
