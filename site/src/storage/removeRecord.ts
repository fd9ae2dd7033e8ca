import type { SavedLists, SavedRecords } from '@windlass/core/schema';
import { announceChange } from './announceChange.ts';
import { attempt } from './attempt.ts';
import { daysOf } from './daysOf.ts';
import type { Failure } from './Failure.ts';
import type { Database, RecordKind } from './Tables.ts';

/** What came of removing a record. */
export type Removed<Kind extends RecordKind> =
  /** All that went, for `writeRecords` to bring back. */
  | { readonly kind: 'removed'; readonly gone: Omit<SavedLists, 'running'> }
  /** Another tab changed it since it was read: nothing was removed, and this is the newer one. */
  | { readonly kind: 'changed-elsewhere'; readonly newer: SavedRecords[Kind] }
  | Failure;

/**
 * Removes a record if it is still as it was when it was read; with a client go the sessions that
 * the client has done. A record that is gone already counts as removed.
 */
export async function removeRecord<Kind extends RecordKind>(
  database: Database,
  kind: Kind,
  { id, revision }: SavedRecords[Kind],
): Promise<Removed<Kind>> {
  const removed = await attempt(async (): Promise<Removed<Kind>> => {
    const transaction = database.transaction(['clients', 'gyms', 'sessions'], 'readwrite');
    const table = transaction.objectStore(kind);
    const stored = (await table.get(id)) as SavedRecords[Kind] | undefined;
    if (stored !== undefined && stored.revision !== revision) {
      return { kind: 'changed-elsewhere', newer: stored };
    }
    const sessions = transaction.objectStore('sessions');
    const done = kind === 'clients' ? await sessions.index('day').getAll(daysOf(id)) : [];
    await Promise.all([
      table.delete(id),
      ...done.map((session) => sessions.delete(session.id)),
      transaction.done,
    ]);
    const gone = { clients: [], gyms: [], sessions: done };
    return { kind: 'removed', gone: stored ? { ...gone, [kind]: [...gone[kind], stored] } : gone };
  });
  if (removed.kind === 'removed') announceChange();
  return removed;
}
