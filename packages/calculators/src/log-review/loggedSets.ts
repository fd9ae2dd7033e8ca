import type { LoggedSet } from '@windlass/core/progress';
import { formatTempo } from '@windlass/core/tempo';
import type { LogInput, TypedSet } from './logFields.ts';
import { type ReadLog, readLog } from './readLog.ts';

/** The sets of the log, pasted or typed in. */
export function loggedSets(input: LogInput): ReadLog {
  if (input.entry === 'paste') return readLog(input);
  return { sets: typedSets(input.rows), unread: [], missing: [] };
}

function typedSets(rows: readonly TypedSet[]): readonly LoggedSet[] {
  const counted = new Map<string, number>();
  return rows.map(({ on, exercise, load, counts, reps, ended, tempo }) => {
    const key = `${on}|${exercise}`;
    const set = (counted.get(key) ?? 0) + 1;
    counted.set(key, set);
    return {
      date: on,
      exercise,
      set,
      load,
      counts,
      reps,
      end: endOf(ended),
      ...(tempo ? { tempo: formatTempo(tempo) } : {}),
    };
  });
}

function endOf(ended: TypedSet['ended']): NonNullable<LoggedSet['end']> {
  if (ended === 'failure') return { kind: 'failure' };
  return ended === 'more'
    ? { kind: 'more', atLeast: 0 }
    : { kind: 'reserve', repsLeft: Number(ended) };
}
