import type { Saved } from '@windlass/core/schema';

/** The revision of a record that is not in the database yet. */
export const NOT_KEPT = 'not-kept';

/** A record that is not kept yet: its content under an id, ready for `keepRecord`. */
export function newRecord<Content extends object>(id: string, content: Content): Content & Saved {
  return { ...content, id, revision: NOT_KEPT, past: [], changedAt: '1970-01-01T00:00:00Z' };
}
