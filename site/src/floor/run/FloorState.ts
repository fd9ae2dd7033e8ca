import type { ReachableLoad } from '@windlass/core/equipment';
import type { LiveSetEvent, LiveSetPlan } from '@windlass/core/extension';
import type { SetEnd } from '@windlass/core/strength';
import type { PastFailureRecord } from './FloorEvent.ts';

/** A count by tempo. */
export interface RunningCount {
  /** When its first repetition begins. */
  readonly startsAt: number;
  /** Repetitions of the set that were over by then. */
  readonly repsBefore: number;
  /** Repetitions that it has told since. */
  readonly told: number;
}

/** A set while it is done. All times are milliseconds of the clock on the wall. */
export interface RunningSet {
  readonly begunAt: number;
  /** When the first repetition began, or begins after the lead-in. */
  readonly startsAt: number;
  /** `null`: it stands still, or there is none. */
  readonly count: RunningCount | null;
  readonly reps: number;
  /** When each repetition ended that the count or a hand told. */
  readonly repsAt: readonly number[];
}

/** A set that is over. */
export interface DoneSet {
  readonly step: number;
  readonly reps: number;
  readonly end?: SetEnd;
  readonly load: ReachableLoad | null;
  /** When its first repetition began, and when it was over. */
  readonly startedAt: number;
  readonly endedAt: number;
  readonly pastFailure?: PastFailureRecord;
  readonly sign?: string;
}

/** Where a session stands: the fold of what has happened. */
export interface FloorState {
  /**
   * `ready`: the set of `step` comes next, perhaps after a rest. `asking`: the last set is over and
   * how it ended is not told. `past-failure`: it goes on by the live set. `over`: nothing is left.
   */
  readonly phase: 'ready' | 'lifting' | 'asking' | 'past-failure' | 'over';
  readonly step: number;
  /** The set that was over last. */
  readonly last: number | null;
  readonly running: RunningSet | null;
  /** By step; a step that was not done is missing. */
  readonly done: ReadonlyMap<number, DoneSet>;
  readonly leftOut: ReadonlySet<number>;
  /** Loads that were changed on the way, by step. */
  readonly loads: ReadonlyMap<number, ReachableLoad>;
  readonly rest: { readonly startedAt: number; readonly seconds: number } | null;
  /** Sets that are to go on past failure, by step: as planned, until something else is chosen. */
  readonly chains: ReadonlyMap<number, LiveSetPlan>;
  /** The log of the live set, from its start to lifting failure and on. */
  readonly live: readonly LiveSetEvent[];
  /** Signs that were told, in order. */
  readonly signs: readonly { readonly step: number; readonly rule: string }[];
  readonly endedBySign: boolean;
}
