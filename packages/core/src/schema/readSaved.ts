import type { Outcome } from '../basis/index.ts';
import { good } from '../basis/index.ts';
import { readWith } from './readWith.ts';
import type { SavedKind, SavedRecords } from './Saved.ts';
import { savedSchemas } from './savedSchemas.ts';

/**
 * Checks a record that an application kept: a client, a gym, a session done or a running one.
 *
 * A good record comes back just as it was written, so that keeping it again loses nothing: a client
 * or a gym in it is turned into the plain object that plans are made from by `readClient` and
 * `readGym`.
 *
 * @param kind the list that the record is kept in.
 * @param input unknown input, such as what a database gave.
 * @example
 * ```ts
 * import { readSaved } from '@windlass/core/schema';
 * const client = { name: 'Winch hand', experience: 'some', bodyWeight: '78 kg', alone: true, health: {}, sets: [] };
 * const record = { id: 'a1', revision: 'r2', past: ['r1'], changedAt: '2027-03-15T18:30:00Z', client };
 * const read = readSaved('clients', record);
 * read.ok && read.value.client === client; // true
 * const other = readSaved('clients', { ...record, changedAt: 'yesterday' });
 * other.ok ? '' : other.problems[0]?.message; // 'Give the moment in universal time, such as 2027-03-15T18:30:00Z.'
 * ```
 */
export function readSaved<Kind extends SavedKind>(
  kind: Kind,
  input: unknown,
): Outcome<SavedRecords[Kind]> {
  const read = readWith(savedSchemas[kind], input);
  return read.ok ? good(input as SavedRecords[Kind]) : read;
}
