import type { SavedLists, Written } from '@windlass/core/schema';
import { attempt } from './attempt.ts';
import { type BrokenRecord, checkRecords } from './checkRecords.ts';
import type { Failure } from './Failure.ts';
import { type Database, tableNames } from './Tables.ts';

/** Everything that is kept, at one moment. */
export interface Everything {
  readonly kind: 'all';
  readonly lists: SavedLists;
  readonly broken: readonly BrokenRecord[];
}

/** Reads everything in one go, so that no change of another tab falls in between. */
export async function readAll(database: Database): Promise<Everything | Failure> {
  return attempt(async (): Promise<Everything> => {
    const transaction = database.transaction(tableNames, 'readonly');
    const all = await Promise.all([
      transaction.objectStore('clients').getAll(),
      transaction.objectStore('gyms').getAll(),
      transaction.objectStore('sessions').getAll(),
      transaction.objectStore('running').getAll(),
      transaction.objectStore('events').getAll(),
    ]);
    const [foundClients, foundGyms, foundSessions, heads, events] = all;
    const eventsOf = Map.groupBy(events, ({ session }) => session);
    const clients = await checkRecords('clients', foundClients);
    const gyms = await checkRecords('gyms', foundGyms);
    const sessions = await checkRecords('sessions', foundSessions);
    const running = await checkRecords(
      'running',
      heads.map((head) => ({
        ...head,
        events: (eventsOf.get(head.id) ?? []).map(({ event }): Written => event),
      })),
    );
    return {
      kind: 'all',
      lists: {
        clients: clients.records,
        gyms: gyms.records,
        sessions: sessions.records,
        running: running.records,
      },
      broken: [clients, gyms, sessions, running].flatMap(({ broken }) => broken),
    };
  });
}
