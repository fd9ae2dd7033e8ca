import * as z from 'zod/mini';
import { clientSchema } from './clientSchema.ts';
import { day, fields, list } from './field.ts';
import { gymSchema } from './gymSchema.ts';
import { loggedSetSchema } from './loggedSetSchema.ts';

const name = (what: string) => {
  const error = `Give ${what} as 1 to 64 letters, digits, hyphens and underscores.`;
  return z.string({ error }).check(z.regex(/^[\w-]{1,64}$/, { error }));
};

const momentError = 'Give the moment in universal time, such as 2027-03-15T18:30:00Z.';
const moment = z
  .string({ error: momentError })
  .check(z.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/, { error: momentError }));

const anything = z.json();

/** Only the three parts are asked for: a plan that is not finished is kept as well. */
const plan = z.looseObject(
  {
    client: z.record(z.string(), anything),
    gym: z.record(z.string(), anything),
    intent: z.record(z.string(), anything),
  },
  { error: 'Give the plan as an object with the fields client, gym, intent.' },
);

const saved = {
  id: name('the id of the record'),
  revision: name('the name of its state'),
  past: list('the names of its states before', name('the name of a state'), 0, 1000),
  changedAt: moment,
};

/** The records that are kept, by the list that they are kept in. */
export const savedSchemas = {
  clients: fields('a kept client', {
    ...saved,
    client: clientSchema,
    gymId: z.exactOptional(name('the id of the gym')),
  }),
  gyms: fields('a kept gym', { ...saved, gym: gymSchema }),
  sessions: fields('a session done', {
    ...saved,
    clientId: name('the id of the client'),
    date: day('the day of the session'),
    plan: z.exactOptional(plan),
    sets: list('the sets', loggedSetSchema, 0, 1000),
  }),
  running: fields('a running session', {
    id: name('the id of the record'),
    clientId: z.exactOptional(name('the id of the client')),
    startedAt: moment,
    plan,
    events: list('the events', anything, 0, 100_000),
  }),
};
