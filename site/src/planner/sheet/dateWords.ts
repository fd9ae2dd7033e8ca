import { language } from '@windlass/calculators/ui';

const format = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' });

/** `15 March 2027` for `2027-03-15`; the text itself where it is no day. */
export function dateWords(date: string): string {
  const day = new Date(`${date}T00:00:00Z`);
  return Number.isNaN(day.getTime()) ? date : format.format(day);
}
