import { announceChange } from './announceChange.ts';
import { attempt } from './attempt.ts';
import type { Failure } from './Failure.ts';
import { type Database, tableNames } from './Tables.ts';

/** Removes everything, in one step: all of it goes, or nothing. */
export async function eraseAll(database: Database): Promise<{ readonly kind: 'erased' } | Failure> {
  const erased = await attempt(async () => {
    const transaction = database.transaction(tableNames, 'readwrite');
    await Promise.all([
      ...tableNames.map((name) => transaction.objectStore(name).clear()),
      transaction.done,
    ]);
    return { kind: 'erased' } as const;
  });
  if (erased.kind === 'erased') announceChange();
  return erased;
}
