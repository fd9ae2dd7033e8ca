import * as z from 'zod/mini';
import { bad, good, type Outcome } from '../basis/index.ts';
import { kg, type LoadValue, lb, parseLoad } from '../load/index.ts';
import { readBy } from './field.ts';

/**
 * A load with its unit: a text such as `"62.5 kg"` or `"45 lb"`, or `{ "value": 45, "unit": "lb" }`.
 * `lightest` is 0 for things that weigh something or nothing, negative where help is meant.
 */
export function loadSchema(what: string, lightest = 0) {
  const error = `Give ${what} with its unit, such as "20 kg" or "45 lb".`;
  const written = z.union(
    [z.string(), z.strictObject({ value: z.number(), unit: z.enum(['kg', 'lb']) })],
    { error },
  );
  return readBy(written, (value) => readLoad(value, error, what, lightest));
}

function readLoad(
  value: string | LoadValue,
  error: string,
  what: string,
  lightest: number,
): Outcome<LoadValue> {
  if (typeof value === 'string' && !/\p{L}|#/u.test(value)) {
    return bad({ code: 'load.no-unit', path: [], message: error, received: value });
  }
  const load = typeof value === 'string' ? parseLoad(value, { unit: 'kg' }) : check(value);
  if (!load.ok) return load;
  if (load.value.value < lightest) {
    const message = `Give ${what} as ${lightest} or more, not ${load.value.value} ${load.value.unit}.`;
    return bad({ code: 'load.negative', path: [], message, received: value });
  }
  return load;
}

function check(value: LoadValue): Outcome<LoadValue> {
  try {
    (value.unit === 'kg' ? kg : lb)(value.value);
    return good(value);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return bad({
      code: 'load.not-exact',
      path: [],
      message: 'Use at most 11 decimals for a load in kg or 3 in lb, and no more than 45 t.',
      received: value,
    });
  }
}
