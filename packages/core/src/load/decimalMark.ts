/**
 * The mark a locale puts before decimals: `.` in English, `,` in German, French and Swedish. For
 * the hint in an input, and for reading what such a locale writes.
 *
 * @param locale a BCP 47 tag; one that the runtime does not know falls back to its own default.
 * @throws RangeError for a tag that is malformed.
 * @example
 * ```ts
 * import { decimalMark } from '@windlass/core/load';
 * decimalMark('en'); // '.'
 * decimalMark('de-AT'); // ','
 * ```
 */
export function decimalMark(locale: string): string {
  const parts = new Intl.NumberFormat(locale, { numberingSystem: 'latn' }).formatToParts(0.5);
  return parts.find((part) => part.type === 'decimal')?.value ?? '.';
}
