import { writeLogCsv } from '@windlass/core/progress';
import type { PerformedSet } from '@windlass/core/strength';
import { said } from '../words.ts';
import type { RunningSet } from './savedSet.ts';

/** The lifting of a set as a log file of one row; what came after failure stands in its note. */
export function logRow(running: RunningSet, performed: PerformedSet, date: string): string {
  const { set, tempo } = running;
  const { exerciseId, load, stages } = set.plan;
  const after = stages.slice(1).map(said.stage);
  return writeLogCsv([
    {
      date,
      exercise: exerciseId,
      set: 1,
      load,
      counts: 'total',
      reps: performed.reps,
      end: performed.end,
      tempo,
      ...(after.length > 0 && { note: said.chain(after) }),
    },
  ]);
}
