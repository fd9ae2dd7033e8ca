import { inspect } from 'node:util';
import type { Literal } from './Literal.ts';

/**
 * Where a value differs from what is shown, or `undefined` when it does not.
 *
 * A number agrees when it rounds to the decimals shown; shown without decimals it is meant exactly,
 * give or take 1e-9 of it, which is what adding decimals in floats may leave. Text agrees whatever
 * kind of space it has, as a comment does not show a no-break space. Objects have the same keys;
 * a key that is `undefined` is not there.
 */
export function mismatch(actual: unknown, shown: Literal, at = 'the value'): string | undefined {
  switch (shown.kind) {
    case 'number':
      return typeof actual === 'number' && agrees(actual, shown)
        ? undefined
        : differs(at, actual, shown.value);
    case 'plain':
      return withSpaces(actual) === withSpaces(shown.value)
        ? undefined
        : differs(at, actual, shown.value);
    case 'array': {
      const { items } = shown;
      if (!Array.isArray(actual)) return differs(at, actual, 'an array');
      if (actual.length !== items.length) return differs(at, actual, `${items.length} items`);
      return firstOf(items.map((item, index) => mismatch(actual[index], item, `${at}[${index}]`)));
    }
    case 'object': {
      if (typeof actual !== 'object' || actual === null) return differs(at, actual, 'an object');
      const found = new Map(Object.entries(actual).filter(([, value]) => value !== undefined));
      const keys = [...new Set([...found.keys(), ...shown.entries.keys()])];
      return firstOf(
        keys.map((key) => {
          const expected = shown.entries.get(key);
          return expected === undefined
            ? differs(`${at}.${key}`, found.get(key), 'not shown')
            : mismatch(found.get(key), expected, `${at}.${key}`);
        }),
      );
    }
  }
}

function agrees(actual: number, shown: { readonly value: number; readonly decimals: number }) {
  if (Object.is(actual, shown.value)) return true;
  const rounding = shown.decimals === 0 ? 0 : 0.5 * 10 ** -shown.decimals;
  return Math.abs(actual - shown.value) <= rounding + 1e-9 * Math.abs(shown.value);
}

function withSpaces(value: unknown): unknown {
  return typeof value === 'string' ? value.replace(/\s/g, ' ') : value;
}

function firstOf(mismatches: readonly (string | undefined)[]): string | undefined {
  return mismatches.find((one) => one !== undefined);
}

function differs(at: string, actual: unknown, shown: unknown): string {
  return `${at} is ${inspect(actual)}, shown is ${typeof shown === 'string' ? shown : inspect(shown)}`;
}
