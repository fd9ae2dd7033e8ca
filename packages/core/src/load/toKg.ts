import { type Load, STEPS_PER_KG } from './Load.ts';

/**
 * Kilograms as the nearest decimal number, for models and drawings; exact loads stay in steps.
 *
 * @example
 * ```ts
 * import { lb, toKg } from '@windlass/core/load';
 * toKg(lb(100)); // 45.359237
 * ```
 */
export function toKg(load: Load): number {
  return load / STEPS_PER_KG;
}
