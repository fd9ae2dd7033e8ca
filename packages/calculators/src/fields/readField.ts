import type { Outcome } from '@windlass/core/basis';
import type { Field, Texts } from './Field.ts';
import { readRows } from './readRows.ts';
import { readScalar } from './readScalar.ts';

/** The value in the text of any field, or what would be right. Never throws, whatever the text. */
export function readField(field: Field, text: string, texts: Texts = {}): Outcome<unknown> {
  return field.kind === 'rows' ? readRows(field, text, texts) : readScalar(field, text, texts);
}
