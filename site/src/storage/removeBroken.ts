import { announceChange } from './announceChange.ts';
import { attempt } from './attempt.ts';
import type { BrokenRecord } from './checkRecords.ts';
import { eventsOfSession } from './eventsOfSession.ts';
import type { Failure } from './Failure.ts';
import type { Database } from './Tables.ts';

/** Removes a record that was set aside, for good. */
export async function removeBroken(
  database: Database,
  { kind, id }: BrokenRecord,
): Promise<{ readonly kind: 'removed' } | Failure> {
  const removed = await attempt(async () => {
    const transaction = database.transaction([kind, 'events'], 'readwrite');
    await Promise.all([
      transaction.objectStore(kind).delete(id),
      kind === 'running' && transaction.objectStore('events').delete(eventsOfSession(id)),
      transaction.done,
    ]);
    return { kind: 'removed' } as const;
  });
  if (removed.kind === 'removed') announceChange();
  return removed;
}
