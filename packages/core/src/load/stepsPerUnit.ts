import { STEPS_PER_KG, STEPS_PER_LB, type Unit } from './Load.ts';

/** Steps of 10 ng in one unit. */
export function stepsPerUnit(unit: Unit): number {
  return unit === 'kg' ? STEPS_PER_KG : STEPS_PER_LB;
}
