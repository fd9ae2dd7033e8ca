import type { SavedRecords } from '@windlass/core/schema';
import { attempt } from './attempt.ts';
import { type BrokenRecord, checkRecords } from './checkRecords.ts';
import type { Failure } from './Failure.ts';
import type { Database, RecordKind } from './Tables.ts';

/** One record by its id. */
export type Found<Kind extends RecordKind> =
  | { readonly kind: 'found'; readonly record: SavedRecords[Kind] }
  | { readonly kind: 'none' }
  | { readonly kind: 'broken'; readonly broken: BrokenRecord }
  | Failure;

/** The record of this id, when there is one that holds. */
export async function findRecord<Kind extends RecordKind>(
  database: Database,
  kind: Kind,
  id: string,
): Promise<Found<Kind>> {
  return attempt(async (): Promise<Found<Kind>> => {
    const stored = await database.get(kind, id);
    if (stored === undefined) return { kind: 'none' };
    const { records, broken } = await checkRecords(kind, [stored]);
    const [record] = records;
    if (record) return { kind: 'found', record };
    const [one] = broken;
    return one ? { kind: 'broken', broken: one } : { kind: 'none' };
  });
}
