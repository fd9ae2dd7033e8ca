import { kg } from './kg.ts';
import type { Load, LoadValue } from './Load.ts';
import { lb } from './lb.ts';

/**
 * The exact load of a value with its unit.
 * @throws RangeError as {@link kg} and {@link lb} do.
 */
export function loadFromValue({ value, unit }: LoadValue): Load {
  return unit === 'kg' ? kg(value) : lb(value);
}
