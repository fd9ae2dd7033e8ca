import { formatTempo } from '@windlass/core/tempo';
import { saveFile } from '../../planner/saveFile.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { cueTrack } from './cueTrack.ts';
import { renderTrack } from './renderTrack.ts';

/** Saves the count of a lift's work sets, to the most repetitions of the window, with its rests. */
export async function saveTrack(
  { lifts, steps }: FloorSession,
  place: number,
  leadInSeconds: number,
): Promise<void> {
  const lift = lifts[place];
  const work = steps.filter((step) => step.lift === place && step.kind === 'work');
  if (!lift || work.length === 0) throw new RangeError('saveTrack: there is no such lift');
  const track = cueTrack({
    lift,
    reps: lift.window.maxReps,
    restsSeconds: work.map(({ restSeconds }) => restSeconds),
    leadInSeconds,
  });
  const sets = work.length === 1 ? '' : `-${work.length}-sets`;
  const name = `${lift.exercise}-${formatTempo(lift.tempo)}-${lift.window.maxReps}-reps${sets}.wav`;
  saveFile(name, await renderTrack(track));
}
