import { words } from '../words.ts';
import { dateWords } from './dateWords.ts';

/** `Monday 15 March 2027` for `2027-03-15`; the text itself where it is no day. */
export function dayWords(date: string): string {
  const weekday = words.weekdays[new Date(`${date}T00:00:00Z`).getUTCDay()];
  return weekday === undefined ? date : words.day(weekday, dateWords(date));
}
