import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { ScalarField, Texts } from './Field.ts';
import { refuse } from './FieldProblem.ts';
import { readChoice } from './readChoice.ts';
import { readDate } from './readDate.ts';
import { readLoad } from './readLoad.ts';
import { readNumber } from './readNumber.ts';
import { readTempo } from './readTempo.ts';
import { readText } from './readText.ts';
import { readTime } from './readTime.ts';
import { readWindow } from './readWindow.ts';

/** The value in the text of one field, `null` for an optional field left empty, or what would be right. */
export function readScalar(field: ScalarField, text: string, texts: Texts = {}): Outcome<unknown> {
  if (text.trim() === '') {
    return field.optional ? good(null) : refuse('empty', words.problems.empty, text);
  }
  switch (field.kind) {
    case 'number':
      return readNumber(field, text);
    case 'load':
      return readLoad(field, text);
    case 'tempo':
      return readTempo(field, text, texts);
    case 'window':
      return readWindow(field, text);
    case 'choice':
      return readChoice(field, text);
    case 'text':
      return readText(field, text);
    case 'date':
      return readDate(field, text);
    case 'time':
      return readTime(text);
  }
}
