import { type CapacityState, restCapacity } from '../capacity/index.ts';
import { carriedOver } from './carriedOver.ts';
import type { SetDone } from './doSet.ts';
import type { LiftFatigue } from './LiftFatigue.ts';
import { together } from './together.ts';

/** Fatigue of a lift in rounds. */
export interface RoundFatigue extends LiftFatigue {
  /** What its sets in these rounds alone have taken: the other lift knows of those before. */
  readonly taken: CapacityState;
}

/** Before the rounds. */
export function begun(start: LiftFatigue): RoundFatigue {
  return { ...start, taken: {} };
}

/** After so many seconds without a set. */
export function rested({ own, carried, taken }: RoundFatigue, seconds: number): RoundFatigue {
  const after = (state: CapacityState) => restCapacity(state, seconds);
  return { own: after(own), carried: after(carried), taken: after(taken) };
}

/** After a set of its own. */
export function worked(before: RoundFatigue, { own }: SetDone): RoundFatigue {
  const added = Object.entries(own).map(([muscle, { fast, slow }]) => {
    const was = before.own[muscle] ?? { fast: 0, slow: 0 };
    return [muscle, { fast: fast - was.fast, slow: slow - was.slow }] as const;
  });
  return { ...before, own, taken: together(before.taken, Object.fromEntries(added)) };
}

/** With what the rounds have taken by the other lift, as far as it shows in this one. */
export function beside({ own, carried }: RoundFatigue, other: RoundFatigue): LiftFatigue {
  return { own, carried: together(carried, carriedOver(other.taken)) };
}
