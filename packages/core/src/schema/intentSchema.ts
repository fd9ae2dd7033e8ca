import * as z from 'zod/mini';
import { bad, good } from '../basis/index.ts';
import { day, decimalNumber, fields, id, list, oneOf, readBy, wholeNumber } from './field.ts';
import { liftOverrulesSchema } from './liftOverrulesSchema.ts';
import { tempoSchema } from './tempoSchema.ts';

const reps = (what: string) => wholeNumber(what, 1, 100);

const window = readBy(
  fields('the rep window', {
    minReps: reps('the fewest repetitions of the window'),
    maxReps: reps('the most repetitions of the window'),
  }),
  (value) => {
    if (value.minReps <= value.maxReps) return good(value);
    return bad({
      code: 'window.upside-down',
      path: [],
      message: `The window is upside down: minReps is ${value.minReps} and maxReps ${value.maxReps}. Give the smaller number first.`,
    });
  },
);

const lift = fields('a lift', {
  exercise: id('the exercise'),
  variant: z.exactOptional(id('the set-up of the exercise')),
  equipment: id('the id of the equipment'),
  window,
  tempo: tempoSchema,
  sets: wholeNumber('the number of sets', 1, 10),
  restSeconds: wholeNumber('the rest between sets in seconds', 0, 1800),
  overrules: z.exactOptional(liftOverrulesSchema),
});

/** What is wanted of a session. */
export const intentSchema = fields('the intent', {
  date: day('the day of the session'),
  unit: oneOf('the unit for loads', ['kg', 'lb']),
  lifts: list('the lifts', lift, 1, 20),
  changeSeconds: wholeNumber('the time between two exercises in seconds', 0, 1800),
  minutesAtMost: z.exactOptional(
    decimalNumber('the longest time for the session', 1, 600, 'minutes'),
  ),
  overrules: z.exactOptional(
    fields('what is fixed of the session', {
      nextDate: z.exactOptional(day('the day of the next session')),
    }),
  ),
});
