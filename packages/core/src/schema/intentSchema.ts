import * as z from 'zod/mini';
import { muscles } from '../anatomy/index.ts';
import { bad, good } from '../basis/index.ts';
import { chainSchema } from './chainSchema.ts';
import { day, decimalNumber, fields, id, list, oneOf, readBy, wholeNumber } from './field.ts';
import { liftOverrulesSchema } from './liftOverrulesSchema.ts';
import { tempoSchema } from './tempoSchema.ts';

const [firstMuscle = 'lats', ...otherMuscles] = muscles.map(({ id: name }) => name);
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

const joinSchema = fields('how the lift is joined with the next one', {
  kind: oneOf('the way of joining', ['pair', 'in-turn']),
  transitionSeconds: wholeNumber('the seconds from one lift to the other', 0, 600),
});

const lift = fields('a lift', {
  exercise: id('the exercise'),
  variant: z.exactOptional(id('the set-up of the exercise')),
  equipment: id('the id of the equipment'),
  window,
  tempo: tempoSchema,
  sets: wholeNumber('the number of sets', 1, 10),
  restSeconds: wholeNumber('the rest between sets in seconds', 0, 1800),
  join: z.exactOptional(joinSchema),
  chain: z.exactOptional(chainSchema),
  overrules: z.exactOptional(liftOverrulesSchema),
});

const muscle = oneOf('a muscle', [firstMuscle, ...otherMuscles]);

const musclesSchema = fields('the muscles to train', {
  muscles: list('the muscles', muscle, 1, 12),
  window,
  tempo: tempoSchema,
  sets: wholeNumber('the number of sets', 1, 10),
  restSeconds: wholeNumber('the rest between sets in seconds', 0, 1800),
  overrules: z.exactOptional(
    list(
      'what is fixed of chosen lifts',
      fields('what is fixed of a chosen lift', {
        exercise: id('the exercise that would be chosen'),
        by: z.exactOptional(
          fields('what is done in its place', {
            exercise: id('the exercise'),
            variant: z.exactOptional(id('the set-up of the exercise')),
            equipment: id('the id of the equipment'),
          }),
        ),
        overrules: z.exactOptional(liftOverrulesSchema),
      }),
      0,
      12,
    ),
  ),
});

const written = fields('the intent', {
  date: day('the day of the session'),
  unit: oneOf('the unit for loads', ['kg', 'lb']),
  lifts: list('the lifts', lift, 0, 20),
  muscles: z.exactOptional(musclesSchema),
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

/** What is wanted of a session: lifts, or muscles for which they are chosen. */
export const intentSchema = readBy(written, (value) => {
  if (value.lifts.length > 0 || value.muscles) return good(value);
  return bad({
    code: 'intent.nothing-wanted',
    path: ['lifts'],
    message: 'Name at least one lift, or the muscles to train.',
  });
});
