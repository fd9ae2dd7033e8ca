import { textAt } from '../planner/state/tree.ts';
import {
  attempt,
  briefLog,
  type Database,
  type Failure,
  listRecords,
  listRunning,
} from '../storage/index.ts';
import type { People, Person } from './People.ts';

/** Reads what the page shows: people and gyms by name, and how much there is of the rest. */
export async function readPeople(
  database: Database,
): Promise<{ readonly kind: 'people'; readonly people: People } | Failure> {
  return attempt(async () => {
    const [clients, gyms, running] = await Promise.all([
      listRecords(database, 'clients'),
      listRecords(database, 'gyms'),
      listRunning(database),
    ]);
    if (clients.kind === 'failed') return clients;
    if (gyms.kind === 'failed') return gyms;
    if (running.kind === 'failed') return running;
    const people = await Promise.all(
      clients.records.map(
        async (record): Promise<Person> => ({
          record,
          name: textAt(record.client, ['name']),
          log: await briefLog(database, record.id),
        }),
      ),
    );
    const places = gyms.records.map((record) => ({ record, name: textAt(record.gym, ['name']) }));
    return {
      kind: 'people',
      people: {
        people: people.sort(byName),
        gyms: places.sort(byName),
        running: running.running,
        broken: [...clients.broken, ...gyms.broken],
        sessions: await database.count('sessions'),
      },
    } as const;
  });
}

function byName(a: { readonly name: string }, b: { readonly name: string }): number {
  return a.name.localeCompare(b.name);
}
