import { attempt } from './attempt.ts';
import { type Checked, checkRecords } from './checkRecords.ts';
import type { Failure } from './Failure.ts';
import type { Database, RecordKind } from './Tables.ts';

/** All records of a table that hold, and those that are set aside. */
export async function listRecords<Kind extends RecordKind>(
  database: Database,
  kind: Kind,
): Promise<({ readonly kind: 'list' } & Checked<Kind>) | Failure> {
  return attempt(async () => ({
    kind: 'list' as const,
    ...(await checkRecords(kind, await database.getAll(kind))),
  }));
}
