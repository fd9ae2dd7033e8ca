import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { TextField } from './Field.ts';
import { refuse } from './FieldProblem.ts';

/** The words without the blanks around them. */
export function readText({ maxLength }: TextField, text: string): Outcome<string> {
  const said = text.trim();
  if (said.length <= maxLength) return good(said);
  return refuse('too-long', words.problems.long(maxLength), text);
}
