import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { ChoiceField } from './Field.ts';
import { refuse } from './FieldProblem.ts';

/** One of the choices, by its id. */
export function readChoice(field: ChoiceField, text: string): Outcome<string> {
  if (field.options.some((option) => option.id === text)) return good(text);
  const choices = field.options.map((option) => option.id);
  return refuse('not-a-choice', words.problems.choice(choices), text);
}
