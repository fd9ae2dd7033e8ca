import type { SavedRecords } from '@windlass/core/schema';
import { announceChange } from './announceChange.ts';
import { attempt } from './attempt.ts';
import type { Failure } from './Failure.ts';
import { NOT_KEPT } from './newRecord.ts';
import type { Stamp } from './Stamp.ts';
import type { Database, RecordKind } from './Tables.ts';

/** What came of keeping a record. */
export type Kept<Kind extends RecordKind> =
  /** The record as it stands in the database now. */
  | { readonly kind: 'kept'; readonly record: SavedRecords[Kind] }
  /** Another tab changed it since it was read: nothing was written, and this is the newer one. */
  | { readonly kind: 'changed-elsewhere'; readonly newer: SavedRecords[Kind] }
  /** Another tab removed it since it was read: nothing was written. */
  | { readonly kind: 'removed-elsewhere' }
  | Failure;

const LONGEST_PAST = 50;

/**
 * Keeps a record, new or changed, if it is still as it was when it was read: two tabs never
 * overwrite each other.
 */
export async function keepRecord<Kind extends RecordKind>(
  database: Database,
  kind: Kind,
  record: SavedRecords[Kind],
  { revision, at }: Stamp,
): Promise<Kept<Kind>> {
  const isNew = record.revision === NOT_KEPT;
  const past = isNew ? [] : [...record.past, record.revision].slice(-LONGEST_PAST);
  const next = { ...record, revision, past, changedAt: at };
  const kept = await attempt(async (): Promise<Kept<Kind>> => {
    const transaction = database.transaction(kind, 'readwrite');
    const stored = (await transaction.store.get(record.id)) as SavedRecords[Kind] | undefined;
    if (stored === undefined && !isNew) return { kind: 'removed-elsewhere' };
    if (stored !== undefined && stored.revision !== record.revision) {
      return { kind: 'changed-elsewhere', newer: stored };
    }
    await Promise.all([transaction.store.put(next), transaction.done]);
    return { kind: 'kept', record: next };
  });
  if (kept.kind === 'kept') announceChange();
  return kept;
}
