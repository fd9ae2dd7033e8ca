import type { Plate } from './Equipment.ts';
import { samePlate } from './samePlate.ts';

/** How many plates two stacks have in common, counted from the inside. */
export function sharedPlates(a: readonly Plate[], b: readonly Plate[]): number {
  const end = a.findIndex((plate, at) => {
    const other = b[at];
    return other === undefined || !samePlate(plate, other);
  });
  return end < 0 ? a.length : end;
}
