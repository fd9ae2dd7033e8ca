import * as z from 'zod/mini';
import { type MuscleId, muscles } from '../anatomy/index.ts';
import { fields, oneOf, wholeNumber } from './field.ts';

const soreness = z.exactOptional(oneOf('the soreness', ['none', 'slight', 'clear', 'severe']));

/** What the client says about the days since the last session. */
export const reportsSchema = fields('the reports', {
  soreness: z.exactOptional(fields('the soreness by muscle', byMuscle(soreness))),
  shortNights: z.exactOptional(wholeNumber('the nights of 6 hours of sleep or less', 0, 60)),
});

function byMuscle<Value>(value: Value): Record<MuscleId, Value> {
  return Object.fromEntries(muscles.map(({ id }) => [id, value])) as Record<MuscleId, Value>;
}
