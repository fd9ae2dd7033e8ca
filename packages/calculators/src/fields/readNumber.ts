import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { NumberField } from './Field.ts';
import { refuse } from './FieldProblem.ts';
import { readDecimal } from './readDecimal.ts';

/** The number in a text, or what would be right. */
export function readNumber(field: NumberField, text: string): Outcome<number> {
  const value = readDecimal(text);
  const range = words.problems.range(field.min, field.max, field.unit);
  if (value === null) return refuse('not-a-number', words.problems.number(range), text);
  if (value < field.min || value > field.max) {
    return refuse('out-of-range', words.problems.outside(range), text);
  }
  if (field.step === 1 && !Number.isInteger(value)) {
    return refuse('not-whole', words.problems.whole(range), text);
  }
  return good(value);
}
