import type { Problem } from '@windlass/core/basis';
import type { SavedKind, SavedRecords } from '@windlass/core/schema';

/** A record that is in the database and cannot be used. It stays there until somebody decides. */
export interface BrokenRecord {
  readonly kind: SavedKind;
  /** Its key in the table. */
  readonly id: string;
  /** All that it holds, as JSON. */
  readonly text: string;
  readonly problems: readonly Problem[];
}

/** Records of one table: those that hold, and those that are set aside. */
export interface Checked<Kind extends SavedKind> {
  readonly records: readonly SavedRecords[Kind][];
  readonly broken: readonly BrokenRecord[];
}

/**
 * Tells the records that hold from those that do not. The code that checks them is as large as the
 * rest of a page that shows them, so it is fetched with the first of them.
 */
export async function checkRecords<Kind extends SavedKind>(
  kind: Kind,
  found: readonly { readonly id: string }[],
): Promise<Checked<Kind>> {
  const { readSaved } = await import('@windlass/core/schema');
  const records: SavedRecords[Kind][] = [];
  const broken: BrokenRecord[] = [];
  for (const one of found) {
    const read = readSaved(kind, one);
    if (read.ok) records.push(read.value);
    else broken.push({ kind, id: one.id, text: JSON.stringify(one), problems: read.problems });
  }
  return { records, broken };
}
