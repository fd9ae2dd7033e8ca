import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { ManyField } from './Field.ts';
import { refuse } from './FieldProblem.ts';

/** The choices in a text such as `rack,cable`, each once and in the order of the field; none for an empty text. */
export function readMany(field: ManyField, text: string): Outcome<readonly string[]> {
  const said = text.trim() === '' ? [] : text.split(',').map((one) => one.trim());
  const ids = field.options.map(({ id }) => id);
  const unknown = said.find((one) => !ids.includes(one));
  if (unknown !== undefined) return refuse('not-a-choice', words.problems.choice(ids), unknown);
  return good(ids.filter((id) => said.includes(id)));
}
