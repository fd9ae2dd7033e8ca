import { type Load, STEPS_PER_KG } from './Load.ts';

/** Kilograms as a decimal number, for people and for models; exact loads stay in steps. */
export function toKg(load: Load): number {
  return load / STEPS_PER_KG;
}
