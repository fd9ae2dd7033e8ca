import * as z from 'zod/mini';
import { good } from '../basis/index.ts';
import { checkTempo, parseTempo } from '../tempo/index.ts';
import { fields, oneOf, readBy } from './field.ts';

const error =
  'Give the tempo as a text in seconds, lowering first, such as "3-0-1-0" or "3-0-X-0"; or as { "code": "1-0-3-0", "order": "lift-first" }.';

const written = z.union(
  [
    z.string(),
    fields('the tempo', {
      code: z.string(),
      order: oneOf('the order of a tempo', ['lower-first', 'lift-first']),
    }),
    z.strictObject({
      lowerSeconds: z.number(),
      pauseAfterLowerSeconds: z.number(),
      liftSeconds: z.union([z.number(), z.literal('X')]),
      pauseAfterLiftSeconds: z.number(),
    }),
  ],
  { error },
);

/** A tempo: a code in lowering-first order, a code with its order named, or the four phases. */
export const tempoSchema = readBy(written, (value) => {
  if (typeof value !== 'string' && !('code' in value)) return checkTempo(value);
  const { code, order } =
    typeof value === 'string' ? { code: value, order: 'lower-first' as const } : value;
  const reading = parseTempo(code, { order });
  return reading.ok ? good(reading.value.tempo) : reading;
});
