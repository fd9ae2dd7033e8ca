import * as z from 'zod/mini';
import type { Problem } from '../basis/index.ts';

/** A whole number; `what` names it in a sentence: "the number of pieces". */
export function wholeNumber(what: string, min: number, max: number) {
  const error = `Give ${what} as a whole number from ${min} to ${max}.`;
  return z
    .number({ error })
    .check(z.int({ error }), z.minimum(min, { error }), z.maximum(max, { error }));
}

/** A number with decimals; `unit` is said in the message. */
export function decimalNumber(what: string, min: number, max: number, unit = '') {
  const error = `Give ${what} as a number from ${min} to ${max}${unit && ` ${unit}`}.`;
  return z.number({ error }).check(z.minimum(min, { error }), z.maximum(max, { error }));
}

/** A text that is not empty. */
export function text(what: string, longest = 200) {
  const error = `Give ${what} as a text of 1 to ${longest} characters.`;
  return z
    .string({ error })
    .check(z.trim(), z.minLength(1, { error }), z.maxLength(longest, { error }));
}

/** A name by which other parts of a file refer to this one. */
export function id(what: string) {
  const error = `Give ${what} as a short name of small letters, digits and hyphens, such as "long-bar".`;
  return z.string({ error }).check(z.regex(/^[a-z0-9][a-z0-9-]{0,63}$/, { error }));
}

/** One of a few words. */
export function oneOf<const Words extends readonly [string, ...string[]]>(
  what: string,
  words: Words,
) {
  return z.enum(words, { error: `Give ${what} as one of: ${words.join(', ')}.` });
}

/** A yes or no. */
export function yesOrNo(what: string) {
  return z.boolean({ error: `Give ${what} as true or false.` });
}

/** A calendar day that exists. */
export function day(what: string) {
  const error = `Give ${what} as a calendar day that exists, year first, such as 2027-03-28.`;
  return z.string({ error }).check(z.refine(isDay, { error }));
}

function isDay(value: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(value)) return false;
  const date = new Date(`${value}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(value);
}

/** A list with bounds on its length. */
export function list<Item extends z.core.$ZodType>(what: string, item: Item, min = 0, max = 1000) {
  const error = `Give ${what} as a list of ${min} to ${max} entries.`;
  return z.array(item, { error }).check(z.minLength(min, { error }), z.maxLength(max, { error }));
}

/** An object with just these fields; one it does not know is a mistake and not ignored. */
export function fields<Shape extends z.core.$ZodShape>(what: string, shape: Shape) {
  return z.strictObject(shape, {
    error: `Give ${what} as an object with the fields ${names(shape)}.`,
  });
}

function names(shape: z.core.$ZodShape): string {
  return Object.keys(shape).join(', ');
}

/** Text that a reader of the ground floors turns into a value, with that reader's own problems. */
export function readBy<Given, Value>(
  given: z.core.$ZodType<Given>,
  read: (value: Given) => { ok: true; value: Value } | { ok: false; problems: readonly Problem[] },
) {
  return z.pipe(
    given,
    z.transform((value: Given, context): Value => {
      const outcome = read(value);
      if (outcome.ok) return outcome.value;
      for (const { code, path, message, params } of outcome.problems) {
        context.issues.push({
          code: 'custom',
          path: [...path],
          message,
          input: value,
          params: { code, params },
        });
      }
      return z.NEVER;
    }),
  );
}
