import type { LoadValue, Unit } from '../load/index.ts';
import type { RepWindow } from '../strength/index.ts';
import type { Tempo } from '../tempo/index.ts';

/** A warm-up set that somebody has fixed. */
export interface FixedWarmUpSet {
  /** The number that is counted up or read off on the equipment. */
  readonly load: LoadValue;
  readonly reps: number;
}

/** What somebody fixes in a lift in place of what would be chosen; the rest follows. */
export interface LiftOverrules {
  /** Id of one of its set-ups, or `usual`. */
  readonly variant?: string;
  /** The number that is counted up or read off on the equipment. */
  readonly load?: LoadValue;
  /** 1 to 10; a time limit takes none of them away. */
  readonly sets?: number;
  /** 0 to 1800. */
  readonly restSeconds?: number;
  /** In order; an empty list is no warm-up set. */
  readonly warmUp?: readonly FixedWarmUpSet[];
}

/** One lift that is wanted. */
export interface LiftIntent {
  /** Id of the exercise. */
  readonly exercise: string;
  /** Id of one of its set-ups, when it is not done in the usual one. */
  readonly variant?: string;
  /** Id of the equipment in the gym. */
  readonly equipment: string;
  /** Lifting failure is wanted inside this window. */
  readonly window: RepWindow;
  readonly tempo: Tempo;
  readonly sets: number;
  readonly restSeconds: number;
  readonly overrules?: LiftOverrules;
}

/** What a coach wants of a session. */
export interface SessionIntent {
  /** The day of the session, `YYYY-MM-DD`. */
  readonly date: string;
  /** Unit in which loads are said. */
  readonly unit: Unit;
  /** In the order in which they are done. */
  readonly lifts: readonly LiftIntent[];
  /** Walking over and setting up between two exercises. */
  readonly changeSeconds: number;
  /** The session is to be no longer, from the first set-up to the end of the last set. */
  readonly minutesAtMost?: number;
  readonly overrules?: {
    /** The day of the next session for these muscles, `YYYY-MM-DD`. */
    readonly nextDate?: string;
  };
}
