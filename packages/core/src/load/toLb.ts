import { type Load, STEPS_PER_LB } from './Load.ts';

/** Pounds as a decimal number, for people and for models; exact loads stay in steps. */
export function toLb(load: Load): number {
  return load / STEPS_PER_LB;
}
