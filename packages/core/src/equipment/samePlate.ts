import { loadFromValue } from '../load/index.ts';
import type { Plate } from './Equipment.ts';

/** Whether two plates are of one kind: the same exact weight, thickness and diameter. */
export function samePlate(a: Plate, b: Plate): boolean {
  return (
    loadFromValue(a.weight) === loadFromValue(b.weight) &&
    a.thicknessMm === b.thicknessMm &&
    a.diameterMm === b.diameterMm
  );
}
