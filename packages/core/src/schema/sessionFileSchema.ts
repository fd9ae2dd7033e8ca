import { clientSchema } from './clientSchema.ts';
import { fields } from './field.ts';
import { gymSchema } from './gymSchema.ts';
import { intentSchema } from './intentSchema.ts';

/** What a session is planned from. */
export const sessionFileSchema = fields('the plan', {
  client: clientSchema,
  gym: gymSchema,
  intent: intentSchema,
});
