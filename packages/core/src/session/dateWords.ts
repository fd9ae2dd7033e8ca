/** A day `YYYY-MM-DD` as it is written out: `15 March 2027`. */
export function dateWords(date: string, locale: string): string {
  const format = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  return format.format(new Date(`${date}T00:00:00Z`));
}
