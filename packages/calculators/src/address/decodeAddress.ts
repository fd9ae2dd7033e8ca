import type { Calculator } from '../contract/Calculator.ts';
import type { Texts } from '../fields/Field.ts';
import type { OtherParameters } from './encodeAddress.ts';

/** An address taken apart. Nothing in it is lost: what is not a field is in `others`. */
export interface Address {
  readonly texts: Texts;
  /** Unknown names, and repeats of known ones. */
  readonly others: OtherParameters;
}

/** Reads the query of an address, with or without the question mark. Damaged values stay as they came. */
export function decodeAddress(calculator: Calculator, query: string): Address {
  const texts: Record<string, string> = { ...calculator.defaults };
  const others: (readonly [string, string])[] = [];
  const seen = new Set<string>();
  for (const [name, value] of new URLSearchParams(query)) {
    if (Object.hasOwn(calculator.fields, name) && !seen.has(name)) {
      texts[name] = value;
      seen.add(name);
    } else {
      others.push([name, value]);
    }
  }
  return { texts, others };
}
