import { loadFromValue, toKg, toLb } from '@windlass/core/load';
import { inUnit } from '../shared/inUnit.ts';
import type { EquationsResult } from './compute.ts';
import type { EquationsInput } from './fields.ts';

/** How far the equations part, in the unit asked for; the load itself for a single rep. */
export function exactOf({ load, show }: EquationsInput, { spread }: EquationsResult): number {
  if (spread === null) return (show === 'kg' ? toKg : toLb)(loadFromValue(load));
  return inUnit(spread.highestKg - spread.lowestKg, show);
}
