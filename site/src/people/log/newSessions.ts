import type { LoggedSet } from '@windlass/core/progress';
import type { DoneSession, Saved } from '@windlass/core/schema';

/** Sets made ready to join a log. */
export interface NewSessions {
  /** One for each day, oldest first. */
  readonly sessions: readonly DoneSession[];
  /** Sets that the log has already. */
  readonly already: number;
}

/** The sets that a log does not have yet, as one session for each day. */
export function newSessions(
  sets: readonly LoggedSet[],
  log: readonly DoneSession[],
  clientId: string,
  saved: () => Saved,
): NewSessions {
  const known = new Set(log.flatMap((session) => session.sets.map(keyOf)));
  const fresh = sets.filter((set) => !known.has(keyOf(set)));
  const days = [...Map.groupBy(fresh, ({ date }) => date)].sort(([a], [b]) => a.localeCompare(b));
  return {
    sessions: days.map(([date, done]) => ({ ...saved(), clientId, date, sets: done })),
    already: sets.length - fresh.length,
  };
}

function keyOf({ date, exercise, set, side, load, reps }: LoggedSet): string {
  return JSON.stringify([date, exercise, set, side, load.value, load.unit, reps]);
}
