import { words } from '../words.ts';

/** `15 March 2027` for `2027-03-15`; the text itself where it is no day. */
export function dateWords(date: string): string {
  const day = new Date(`${date}T00:00:00Z`);
  const month = words.months[day.getUTCMonth()];
  return month === undefined ? date : words.date(day.getUTCDate(), month, day.getUTCFullYear());
}
