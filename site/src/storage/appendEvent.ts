import type { Written } from '@windlass/core/schema';
import { attempt } from './attempt.ts';
import { eventsOfSession } from './eventsOfSession.ts';
import type { Failure } from './Failure.ts';
import type { Database } from './Tables.ts';

/** What came of keeping an event. */
export type Appended =
  | { readonly kind: 'appended' }
  /** Another tab has written to this session, or ended it: read it again. Nothing was written. */
  | { readonly kind: 'changed-elsewhere' }
  | Failure;

/**
 * Keeps one event of a running session, after those that are there: one small write, which is on
 * the disk before this is over, so that not even an empty battery loses it.
 *
 * @param number how many events this page knows of, which is the number of the new one.
 */
export async function appendEvent(
  database: Database,
  session: string,
  number: number,
  event: Written,
): Promise<Appended> {
  return attempt(async (): Promise<Appended> => {
    const transaction = database.transaction(['running', 'events'], 'readwrite', {
      durability: 'strict',
    });
    const events = transaction.objectStore('events');
    const head = await transaction.objectStore('running').getKey(session);
    const there = await events.count(eventsOfSession(session));
    if (head === undefined || there !== number) return { kind: 'changed-elsewhere' };
    await Promise.all([events.add({ session, number, event }), transaction.done]);
    return { kind: 'appended' };
  });
}
