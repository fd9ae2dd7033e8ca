/** The mark a locale puts before decimals: `.` in English, `,` in German, French and Swedish. */
export function decimalMark(locale: string): string {
  const parts = new Intl.NumberFormat(locale, { numberingSystem: 'latn' }).formatToParts(0.5);
  return parts.find((part) => part.type === 'decimal')?.value ?? '.';
}
