import type { SetDone } from './doSet.ts';
import type { JoinIntent } from './Intent.ts';
import type { LoadedLift } from './loadedLift.ts';
import { secondsOfSet } from './secondsOfSet.ts';

/** How long a set of one lift lets the other one rest: in a pair that works as well. */
export function setWait({ kind }: JoinIntent, lift: LoadedLift, done: SetDone): number {
  return kind === 'in-turn' ? secondsOfSet(lift, done) : 0;
}
