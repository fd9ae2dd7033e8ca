import * as z from 'zod/mini';
import { good } from '../basis/index.ts';
import { day, fields, id, list, oneOf, readBy, text, wholeNumber, yesOrNo } from './field.ts';
import { healthSchema } from './healthSchema.ts';
import { loadSchema } from './loadSchema.ts';
import { reportsSchema } from './reportsSchema.ts';
import { tempoSchema } from './tempoSchema.ts';

const bodyWeight = z.exactOptional(loadSchema('the body weight'));

const setEnd = z.discriminatedUnion(
  'kind',
  [
    fields('a set to failure', { kind: z.literal('failure') }),
    fields('a set stopped with repetitions left', {
      kind: z.literal('reserve'),
      repsLeft: wholeNumber('the repetitions that were left', 0, 50),
    }),
    fields('a set stopped at a target', {
      kind: z.literal('more'),
      atLeast: wholeNumber('the repetitions that were surely left', 0, 50),
    }),
  ],
  {
    error:
      'Say how the set ended: "failure", "more" (the target was reached and at least one more was there), or { "kind": "reserve", "repsLeft": 2 }.',
  },
);

/** How a set ended, with the two ends that need no number also as plain words. */
const setEndOrWord = readBy(
  z.union([z.enum(['failure', 'more']), setEnd], {
    error:
      'Say how the set ended: "failure", "more" (the target was reached and at least one more was there), or { "kind": "reserve", "repsLeft": 2 }.',
  }),
  (value) => {
    if (value === 'failure') return good({ kind: 'failure' as const });
    return good(value === 'more' ? { kind: 'more' as const, atLeast: 1 } : value);
  },
);

const loggedSet = fields('a set', {
  date: day('the day of the set'),
  exercise: id('the exercise'),
  equipment: id('the id of the equipment'),
  load: loadSchema('the load of the set', -1000),
  reps: wholeNumber('the repetitions', 0, 200),
  end: setEndOrWord,
  tempo: z.exactOptional(tempoSchema),
  bodyWeight,
});

/** A client: experience, health answers, whether alone, and the sets that are known. */
export const clientSchema = fields('the client', {
  name: text('the name of the client', 80),
  experience: oneOf('the experience', ['new', 'some', 'experienced']),
  bodyWeight,
  health: healthSchema,
  alone: yesOrNo('whether the client trains alone'),
  reports: z.exactOptional(reportsSchema),
  sets: list('the sets', loggedSet, 0, 5000),
});
