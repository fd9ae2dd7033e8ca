import type { LoadValue } from '@windlass/core/load';
import type { PerformedSet, SetEnd } from '@windlass/core/strength';
import { secondsPerRep, type Tempo } from '@windlass/core/tempo';
import type { GearInput } from './gearFields.ts';
import { movedLoad } from './gearLoad.ts';

/** One row of the form. */
export interface SetRow {
  readonly load: LoadValue;
  readonly reps: number;
  readonly tempo: Tempo | null;
  readonly ended: 'failure' | '1' | '2' | '3' | '4' | 'more';
  readonly daysAgo: number;
}

/** The rows as sets, oldest first, with today as day 0; a stack number counts as what the handle has. */
export function performedSets(
  rows: readonly SetRow[],
  gear: Pick<GearInput, 'gear' | 'pulley'>,
): readonly PerformedSet[] {
  return rows
    .map(({ load, reps, tempo, ended, daysAgo }) => ({
      load: movedLoad(load, gear),
      reps,
      end: endOf(ended),
      day: daysAgo === 0 ? 0 : -daysAgo,
      ...(tempo ? { secondsPerRep: secondsPerRep(tempo) } : {}),
    }))
    .sort((a, b) => a.day - b.day);
}

function endOf(ended: SetRow['ended']): SetEnd {
  if (ended === 'failure') return { kind: 'failure' };
  return ended === 'more'
    ? { kind: 'more', atLeast: 1 }
    : { kind: 'reserve', repsLeft: Number(ended) };
}
