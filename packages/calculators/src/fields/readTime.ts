import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import { refuse } from './FieldProblem.ts';

/** A time of day; hours and minutes with a colon or a point between them. */
export function readTime(text: string): Outcome<string> {
  const [, hour = '', minute = ''] = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(text.trim()) ?? [];
  if (hour === '') return refuse('not-a-time', words.problems.time, text);
  return good(`${hour.padStart(2, '0')}:${minute}`);
}
