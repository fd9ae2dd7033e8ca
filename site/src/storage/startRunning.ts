import type { RunningSession } from '@windlass/core/schema';
import { announceChange } from './announceChange.ts';
import { attempt } from './attempt.ts';
import type { Failure } from './Failure.ts';
import type { Database } from './Tables.ts';

/** Begins to keep a running session, with no event yet. An id that is taken is a failure. */
export async function startRunning(
  database: Database,
  head: Omit<RunningSession, 'events'>,
): Promise<{ readonly kind: 'started' } | Failure> {
  const started = await attempt(async () => {
    await database.add('running', head);
    return { kind: 'started' } as const;
  });
  if (started.kind === 'started') announceChange();
  return started;
}
