import { requireNumber } from '../basis/index.ts';

/** A length in whole micrometres, so that lengths add up exactly. From 0 to 10 m. */
export function micrometres(millimetres: number): number {
  requireNumber('equipment', 'length in mm', millimetres, 0, 10_000);
  return Math.round(millimetres * 1000);
}
