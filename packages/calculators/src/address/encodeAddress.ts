import type { Calculator } from '../contract/Calculator.ts';
import type { Field, Texts } from '../fields/Field.ts';

/** Parameters that a calculator does not know, in the order they came. */
export type OtherParameters = readonly (readonly [name: string, value: string])[];

/**
 * The query of an address for a calculator's texts, without the question mark: only what differs
 * from the defaults, in the order of the fields, then whatever else the address carried. A default
 * is written where the address carries the name again, which would otherwise be read in its place.
 * Texts too long for an address are left out.
 */
export function encodeAddress(
  calculator: Calculator,
  texts: Texts,
  others: OtherParameters = [],
): string {
  const repeated = new Set(others.map(([name]) => name));
  const isWritten = (name: string) =>
    hasRoom(calculator.fields[name], texts[name]) &&
    texts[name] !== undefined &&
    (texts[name] !== calculator.defaults[name] || repeated.has(name));
  const own = Object.keys(calculator.fields)
    .filter(isWritten)
    .map((name) => [name, texts[name] ?? ''] as const);
  const pairs = [...own, ...others].map(([name, value]) => [name, value]);
  return new URLSearchParams(pairs)
    .toString()
    .replace(/%(2C|3A|2F|40|7E)/g, (escaped) => decodeURIComponent(escaped));
}

/** Whether a text is short enough for an address. */
function hasRoom(field: Field | undefined, text = ''): boolean {
  return field?.kind !== 'text' || text.length <= (field.inAddressUpTo ?? Number.POSITIVE_INFINITY);
}

/** A query as it follows a path: with its question mark, or nothing where it is empty. */
export function asSearch(query: string): string {
  return query === '' ? '' : `?${query}`;
}
