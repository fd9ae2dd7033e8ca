import type { Plate, ReachableLoad } from '../equipment/index.ts';
import { kg, lb, loadFromValue } from '../load/index.ts';

/** Plates of this diameter hold a bar at its usual height above the floor. */
const FULL_SIZE_MM = 430;

/**
 * Whether each end of the bar has a full-size plate: one of 430 mm and more or, where no diameter
 * is known, of 20 kg or 45 lb and more.
 */
export function standsAtFullHeight({ loading }: ReachableLoad): boolean {
  return loading.kind === 'plates' && loading.stacks.every(({ plates }) => plates.some(isFullSize));
}

function isFullSize({ weight, diameterMm }: Plate): boolean {
  if (diameterMm !== undefined) return diameterMm >= FULL_SIZE_MM;
  return loadFromValue(weight) >= Math.min(kg(20), lb(45));
}
