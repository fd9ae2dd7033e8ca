import { daysOf } from './daysOf.ts';
import type { Database } from './Tables.ts';

/** How much there is in a client's log. */
export interface BriefLog {
  readonly sessions: number;
  /** The day of the latest session. */
  readonly lastDate?: string;
}

/** How much there is in a client's log, without reading the log. */
export async function briefLog(database: Database, clientId: string): Promise<BriefLog> {
  const index = database.transaction('sessions').store.index('day');
  const [sessions, last] = await Promise.all([
    index.count(daysOf(clientId)),
    index.openKeyCursor(daysOf(clientId), 'prev'),
  ]);
  return { sessions, ...(last && { lastDate: last.key[1] }) };
}
