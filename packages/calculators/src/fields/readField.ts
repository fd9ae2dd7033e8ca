import type { Outcome } from '@windlass/core/basis';
import type { Field, Texts } from './Field.ts';
import { readMany } from './readMany.ts';
import { readRows } from './readRows.ts';
import { readScalar } from './readScalar.ts';

/** The value in the text of any field, or what would be right. Never throws, whatever the text. */
export function readField(field: Field, text: string, texts: Texts = {}): Outcome<unknown> {
  if (field.kind === 'rows') return readRows(field, text, texts);
  if (field.kind === 'many') return readMany(field, text);
  return readScalar(field, text, texts);
}
