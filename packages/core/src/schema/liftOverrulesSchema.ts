import * as z from 'zod/mini';
import { fields, id, list, wholeNumber } from './field.ts';
import { loadSchema } from './loadSchema.ts';

const warmUpSet = fields('a fixed warm-up set', {
  load: loadSchema('the load of the warm-up set', -1000),
  reps: wholeNumber('the repetitions of the warm-up set', 1, 50),
});

/** What somebody fixes in a lift in place of what would be chosen. */
export const liftOverrulesSchema = fields('what is fixed of the lift', {
  variant: z.exactOptional(id('the fixed set-up, or "usual",')),
  load: z.exactOptional(loadSchema('the fixed load', -1000)),
  sets: z.exactOptional(wholeNumber('the fixed number of sets', 1, 10)),
  restSeconds: z.exactOptional(wholeNumber('the fixed rest in seconds', 0, 1800)),
  warmUp: z.exactOptional(list('the fixed warm-up sets', warmUpSet, 0, 10)),
});
