import { attempt } from './attempt.ts';
import { type Checked, checkRecords } from './checkRecords.ts';
import { daysOf } from './daysOf.ts';
import type { Failure } from './Failure.ts';
import type { Database } from './Tables.ts';

/** The sessions that a client has done, oldest first, and those that are set aside. */
export async function listSessionsOf(
  database: Database,
  clientId: string,
): Promise<({ readonly kind: 'list' } & Checked<'sessions'>) | Failure> {
  return attempt(async () => {
    const found = await database.getAllFromIndex('sessions', 'day', daysOf(clientId));
    return { kind: 'list' as const, ...(await checkRecords('sessions', found)) };
  });
}
