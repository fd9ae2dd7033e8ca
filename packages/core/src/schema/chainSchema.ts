import * as z from 'zod/mini';
import { decimalNumber, fields, list, oneOf, wholeNumber, yesOrNo } from './field.ts';

const seconds = (what: string) => decimalNumber(what, 1, 120, 'seconds');

const stage = z.discriminatedUnion(
  'kind',
  [
    fields('part-range repetitions', {
      kind: z.literal('part-range'),
      maxReps: wholeNumber('the most part-range repetitions', 1, 50),
    }),
    fields('a lighter load', {
      kind: z.literal('lighter'),
      loadShare: decimalNumber('the new load as a share of the one before', 0.05, 1),
    }),
    fields('a pause', { kind: z.literal('pause'), seconds: seconds('the pause') }),
    fields('repetitions with help', {
      kind: z.literal('assisted'),
      reps: wholeNumber('the repetitions with help', 1, 20),
    }),
    fields('a hold', {
      kind: z.literal('hold'),
      at: oneOf('the position of the hold', ['stretched', 'middle', 'contracted']),
      maxSeconds: seconds('the longest hold'),
    }),
    fields('slow lowering', {
      kind: z.literal('lower'),
      secondsEach: seconds('one lowering'),
      maxLowerings: wholeNumber('the most lowerings', 1, 50),
    }),
  ],
  {
    error:
      'Give each stage after lifting failure by its kind: part-range, lighter, pause, assisted, hold or lower.',
  },
);

/** How the last set of a lift goes on past lifting failure. What is not offered, planning says. */
export const chainSchema = fields('what follows lifting failure', {
  stages: list('the stages after lifting failure', stage, 1, 7),
  stops: z.exactOptional(yesOrNo('whether stops are set and tried')),
  switchedOn: z.exactOptional(yesOrNo('whether the coach has switched on what is off by default')),
});
