import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { NumberField } from './Field.ts';
import { refuse } from './FieldProblem.ts';
import { readDecimal } from './readDecimal.ts';

/** The number in a text, or what would be right. */
export function readNumber(field: NumberField, text: string): Outcome<number> {
  const value = readDecimal(text);
  const range = words.problems.range(field.min, field.max, field.unit);
  const isWhole = field.step === 1;
  if (value === null) {
    const { whole, number } = words.problems;
    return refuse('not-a-number', (isWhole ? whole : number)(range), text);
  }
  if (value < field.min || value > field.max) {
    return refuse('out-of-range', words.problems.outside(range), text);
  }
  if (isWhole && !Number.isInteger(value)) {
    return refuse('not-whole', words.problems.whole(range), text);
  }
  return good(value);
}
