import * as z from 'zod/mini';
import { good } from '../basis/index.ts';
import { kg, lb } from '../load/index.ts';
import { parseTempo } from '../tempo/index.ts';
import { day, decimalNumber, fields, list, oneOf, readBy, wholeNumber } from './field.ts';

const load = (what: string, lightest: number) => {
  const error = `Give ${what} as { "value": 62.5, "unit": "kg" }, ${lightest} or more, with at most 11 decimals in kg or 3 in lb.`;
  return z
    .strictObject({ value: z.number(), unit: z.enum(['kg', 'lb']) }, { error })
    .check(z.refine(({ value, unit }) => value >= lightest && isExact(value, unit), { error }));
};

function isExact(value: number, unit: 'kg' | 'lb'): boolean {
  try {
    (unit === 'kg' ? kg : lb)(value);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

const setEnd = z.discriminatedUnion(
  'kind',
  [
    fields('a set to failure', { kind: z.literal('failure') }),
    fields('a set stopped with repetitions left', {
      kind: z.literal('reserve'),
      repsLeft: decimalNumber('the repetitions that were left', 0, 50),
    }),
    fields('a set stopped at a target', {
      kind: z.literal('more'),
      atLeast: decimalNumber('the repetitions that were surely left', 0, 50),
    }),
  ],
  { error: 'Give the kind of end as one of: failure, reserve, more.' },
);

const writtenTempo = readBy(z.string({ error: 'Give the tempo as a text.' }), (code) => {
  const read = parseTempo(code);
  return read.ok ? good(code) : read;
});

/** A log may hold any words, of any length. */
const free = (what: string) => z.string({ error: `Give ${what} as a text.` });

/** A set of a log: what `LoggedSet` describes. */
export const loggedSetSchema = fields('a logged set', {
  date: day('the day of the set'),
  exercise: free('the exercise'),
  set: wholeNumber('the number of the set', 1, 1000),
  side: z.exactOptional(oneOf('the side', ['left', 'right'])),
  load: load('the load of the set', -1000),
  counts: oneOf('what the load counts', ['total', 'each-hand', 'stack', 'plates', 'added']),
  hands: z.exactOptional(
    z.union([z.literal(1), z.literal(2)], { error: 'Give the number of hands as 1 or 2.' }),
  ),
  bodyWeight: z.exactOptional(load('the body weight', 0)),
  reps: wholeNumber('the repetitions', 0, 200),
  end: z.exactOptional(setEnd),
  tempo: z.exactOptional(writtenTempo),
  restSeconds: z.exactOptional(decimalNumber('the rest before the set in seconds', 0, 86_400)),
  tags: z.exactOptional(list('the tags', free('a tag'), 0, 1000)),
  equipment: z.exactOptional(free('the equipment')),
  note: z.exactOptional(free('the note')),
});
