import { good, type Outcome } from '@windlass/core/basis';
import { type LoadValue, loadFromValue, parseLoad, toKg } from '@windlass/core/load';
import { words } from '../words.ts';
import type { LoadField } from './Field.ts';
import { refuse } from './FieldProblem.ts';

/** A load with its unit, kept in the unit it was given in. A bare number is in the field's own unit. */
export function readLoad(field: LoadField, text: string): Outcome<LoadValue> {
  const read = parseLoad(text, { unit: field.default?.unit ?? 'kg', locale: 'en' });
  if (!read.ok) return read;
  const inKg = toKg(loadFromValue(read.value));
  if (inKg < field.minKg || inKg > field.maxKg) {
    const range = words.problems.loadRange(field.minKg, field.maxKg);
    return refuse('out-of-range', words.problems.outside(range), text);
  }
  return good(read.value);
}
