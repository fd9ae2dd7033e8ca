import { chainWords, liveWords } from '@windlass/calculators/live';
import { type LiveSet, liveSetRecord, type StageDone } from '@windlass/core/extension';
import type { PastFailureRecord } from '../run/FloorEvent.ts';

/** The record of a live set that is over, for the session and its log; nothing while it goes on. */
export function pastFailureRecord(set: LiveSet): PastFailureRecord | null {
  const record = liveSetRecord(set, 0);
  if (record.kind === 'open') return null;
  const { performed, stages, signs } = record;
  const [sign] = signs;
  const further = stages.slice(1);
  return {
    reps: performed?.reps ?? 0,
    ...(performed && { end: performed.end }),
    stagesDone: further.length,
    note: further.map(stageNote).join(', '),
    ...(sign !== undefined && { sign }),
  };
}

/** `Hold 8 s`, `Lower 5, 4.8 s`. */
function stageNote({ stage, seconds }: StageDone): string {
  const name = chainWords.stageNames[stage.kind];
  return seconds.length === 0 ? name : `${name} ${liveWords.each(seconds)} s`;
}
