import type { RunningSession } from '@windlass/core/schema';
import { attempt } from './attempt.ts';
import { type BrokenRecord, checkRecords } from './checkRecords.ts';
import { eventsOfSession } from './eventsOfSession.ts';
import type { Failure } from './Failure.ts';
import type { Database } from './Tables.ts';

/** A running session with everything that happened in it so far. */
export type FoundRunning =
  | { readonly kind: 'found'; readonly record: RunningSession }
  | { readonly kind: 'none' }
  | { readonly kind: 'broken'; readonly broken: BrokenRecord }
  | Failure;

/** The running session of this id. */
export async function findRunning(database: Database, id: string): Promise<FoundRunning> {
  return attempt(async (): Promise<FoundRunning> => {
    const transaction = database.transaction(['running', 'events'], 'readonly');
    const [head, happened] = await Promise.all([
      transaction.objectStore('running').get(id),
      transaction.objectStore('events').getAll(eventsOfSession(id)),
    ]);
    if (head === undefined) return { kind: 'none' };
    const whole = { ...head, events: happened.map(({ event }) => event) };
    const { records, broken } = await checkRecords('running', [whole]);
    const [record] = records;
    if (record) return { kind: 'found', record };
    const [one] = broken;
    return one ? { kind: 'broken', broken: one } : { kind: 'none' };
  });
}
