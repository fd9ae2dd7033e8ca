import { STEPS_PER_KG, STEPS_PER_LB, type Unit } from '@windlass/core/load';

/** Kilograms in the unit that is asked for, unrounded. */
export function inUnit(kg: number, unit: Unit): number {
  return unit === 'kg' ? kg : (kg * STEPS_PER_KG) / STEPS_PER_LB;
}
