import type { SetDone } from './doSet.ts';
import type { LoadedLift } from './loadedLift.ts';
import { setSeconds } from './setSeconds.ts';

/** How long a set takes, with what follows its failure. */
export function secondsOfSet({ known }: LoadedLift, { set, chain }: SetDone): number {
  return setSeconds(known.question.lift, set.reps.likely) + (chain?.addedSeconds ?? 0);
}
