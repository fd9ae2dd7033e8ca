import { good, type Outcome } from '@windlass/core/basis';
import { words } from '../words.ts';
import type { DateField } from './Field.ts';
import { refuse } from './FieldProblem.ts';

/** A date that the calendar has, as year, month and day; the order is never guessed. */
export function readDate({ min, max }: DateField, text: string): Outcome<string> {
  const date = text.trim();
  const isDate = /^\d{4}-\d{2}-\d{2}$/.test(date) && roundTrip(date) === date;
  const range = words.problems.dateRange(min, max);
  if (!isDate) return refuse('not-a-date', words.problems.date(range), text);
  if (date < min || date > max) return refuse('out-of-range', words.problems.outside(range), text);
  return good(date);
}

/** The date that a calendar makes of it: 2026-02-30 comes back as another day. */
function roundTrip(date: string): string {
  const time = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(time) ? '' : new Date(time).toISOString().slice(0, 10);
}
