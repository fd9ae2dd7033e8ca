import { type Load, type LoadValue, loadFromValue, scaleLoad } from '@windlass/core/load';
import type { PerformedSet, SetEnd } from '@windlass/core/strength';
import { secondsPerRep, type Tempo } from '@windlass/core/tempo';

/** One row of the form. */
export interface SetRow {
  readonly load: LoadValue;
  readonly reps: number;
  readonly tempo: Tempo | null;
  readonly ended: 'failure' | '1' | '2' | '3' | '4' | 'more';
  readonly daysAgo: number;
}

/**
 * The rows as sets, oldest first, with today as day 0.
 *
 * @param ratio stack number to handle force; 1 where what is written is what is moved.
 */
export function performedSets(rows: readonly SetRow[], ratio: number): readonly PerformedSet[] {
  return rows
    .map(({ load, reps, tempo, ended, daysAgo }) => ({
      load: moved(loadFromValue(load), ratio),
      reps,
      end: endOf(ended),
      day: daysAgo === 0 ? 0 : -daysAgo,
      ...(tempo ? { secondsPerRep: secondsPerRep(tempo) } : {}),
    }))
    .sort((a, b) => a.day - b.day);
}

function moved(load: Load, ratio: number): Load {
  return ratio === 1 ? load : scaleLoad(load, 1, ratio);
}

function endOf(ended: SetRow['ended']): SetEnd {
  if (ended === 'failure') return { kind: 'failure' };
  return ended === 'more'
    ? { kind: 'more', atLeast: 1 }
    : { kind: 'reserve', repsLeft: Number(ended) };
}
