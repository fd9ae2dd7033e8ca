import type { DoneSession } from '@windlass/core/schema';
import { announceChange } from './announceChange.ts';
import { attempt } from './attempt.ts';
import { eventsOfSession } from './eventsOfSession.ts';
import type { Failure } from './Failure.ts';
import type { Stamp } from './Stamp.ts';
import type { Database } from './Tables.ts';

/**
 * Ends a running session in one step: it leaves the running ones, and what was done joins the log.
 *
 * @param done made by `newRecord`; nothing where the session is thrown away.
 */
export async function endRunning(
  database: Database,
  id: string,
  done: DoneSession | null,
  { revision, at }: Stamp,
): Promise<{ readonly kind: 'ended' } | Failure> {
  const ended = await attempt(async () => {
    const transaction = database.transaction(['running', 'events', 'sessions'], 'readwrite');
    await Promise.all([
      transaction.objectStore('running').delete(id),
      transaction.objectStore('events').delete(eventsOfSession(id)),
      done && transaction.objectStore('sessions').add({ ...done, revision, changedAt: at }),
      transaction.done,
    ]);
    return { kind: 'ended' } as const;
  });
  if (ended.kind === 'ended') announceChange();
  return ended;
}
