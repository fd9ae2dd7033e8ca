import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { CountWindow, WindowField } from './Field.ts';
import { refuse } from './FieldProblem.ts';

/** A window such as `6-10`, or one number for a window of one. Every common dash is understood. */
export function readWindow(field: WindowField, text: string): Outcome<CountWindow> {
  const range = words.problems.range(field.min, field.max, field.unit);
  const match = /^\s*(\d{1,4})\s*(?:[-\u2010-\u2015\u2212]\s*(\d{1,4}))?\s*$/.exec(text);
  if (!match) return refuse('not-a-window', words.problems.window(range), text);
  const low = Number(match[1]);
  const high = Number(match[2] ?? match[1]);
  if (low > high) return refuse('window-upside-down', words.problems.upsideDown(low, high), text);
  if (low < field.min || high > field.max) {
    return refuse('out-of-range', words.problems.window(range), text);
  }
  return good({ low, high });
}
