import type { RunningSession } from '@windlass/core/schema';
import { attempt } from './attempt.ts';
import type { Failure } from './Failure.ts';
import type { Database } from './Tables.ts';

/** A running session without its events. */
export type RunningHead = Omit<RunningSession, 'events'>;

/** The sessions that are going on, the latest first; `findRunning` reads what happened in one. */
export async function listRunning(
  database: Database,
): Promise<{ readonly kind: 'list'; readonly running: readonly RunningHead[] } | Failure> {
  return attempt(async () => {
    const running = await database.getAll('running');
    const inOrder = running.toSorted((a, b) => b.startedAt.localeCompare(a.startedAt));
    return { kind: 'list', running: inOrder } as const;
  });
}
