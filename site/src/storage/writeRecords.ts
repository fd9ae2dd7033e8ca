import type { SavedLists } from '@windlass/core/schema';
import { announceChange } from './announceChange.ts';
import { attempt } from './attempt.ts';
import { eventsOfSession } from './eventsOfSession.ts';
import type { Failure } from './Failure.ts';
import { type Database, tableNames } from './Tables.ts';

/** The revision that each record had when it was looked at, by id; none for one that was not there. */
export type Expected = ReadonlyMap<string, string>;

/**
 * Writes records as they are, over those with the same ids, all or none: to restore a backup, and
 * to bring back what was removed.
 *
 * @param expected where given, nothing is written unless every record is still as it was.
 */
export async function writeRecords(
  database: Database,
  { clients = [], gyms = [], sessions = [], running = [] }: Partial<SavedLists>,
  expected?: Expected,
): Promise<{ readonly kind: 'written' } | { readonly kind: 'changed-elsewhere' } | Failure> {
  const written = await attempt(async () => {
    const transaction = database.transaction(tableNames, 'readwrite');
    const table = {
      clients: transaction.objectStore('clients'),
      gyms: transaction.objectStore('gyms'),
      sessions: transaction.objectStore('sessions'),
      running: transaction.objectStore('running'),
      events: transaction.objectStore('events'),
    };
    const now = await Promise.all([
      ...clients.map(({ id }) => table.clients.get(id).then((stored) => ({ id, stored }))),
      ...gyms.map(({ id }) => table.gyms.get(id).then((stored) => ({ id, stored }))),
      ...sessions.map(({ id }) => table.sessions.get(id).then((stored) => ({ id, stored }))),
    ]);
    if (expected && now.some(({ id, stored }) => stored?.revision !== expected.get(id))) {
      return { kind: 'changed-elsewhere' } as const;
    }
    await Promise.all([
      ...clients.map((record) => table.clients.put(record)),
      ...gyms.map((record) => table.gyms.put(record)),
      ...sessions.map((record) => table.sessions.put(record)),
      ...running.flatMap(({ events, ...head }) => [
        table.running.put(head),
        table.events.delete(eventsOfSession(head.id)),
        ...events.map((event, number) => table.events.put({ session: head.id, number, event })),
      ]),
      transaction.done,
    ]);
    return { kind: 'written' } as const;
  });
  if (written.kind === 'written') announceChange();
  return written;
}
