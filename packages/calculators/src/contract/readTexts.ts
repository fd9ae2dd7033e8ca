import type { Fields, InputOf, Texts } from '../fields/Field.ts';
import type { FieldProblem } from '../fields/FieldProblem.ts';
import { fieldText } from '../fields/fieldText.ts';
import { readField } from '../fields/readField.ts';
import type { Unreadable } from './Answer.ts';
import { isShown } from './isShown.ts';

/** The values of all texts, or the problems by field. A hidden field has its default value. */
export function readTexts<F extends Fields>(
  fields: F,
  texts: Texts,
): { readonly kind: 'input'; readonly input: InputOf<F> } | Unreadable {
  const values: Record<string, unknown> = {};
  const problems: Record<string, readonly FieldProblem[]> = {};
  for (const [name, field] of Object.entries(fields)) {
    const text = isShown(field, texts) ? (texts[name] ?? '') : fieldText(field, field.default);
    const read = readField(field, text, texts);
    if (read.ok) values[name] = read.value;
    else problems[name] = read.problems;
  }
  if (Object.keys(problems).length > 0) return { kind: 'unreadable', problems };
  return { kind: 'input', input: values as InputOf<F> };
}
