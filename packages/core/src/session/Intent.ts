import type { MuscleId } from '../anatomy/index.ts';
import type { LiftStage, Stage } from '../extension/index.ts';
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

/** How a lift is done in rounds with the next one. */
export interface JoinIntent {
  /**
   * `pair`: an isolation set straight into a set of the next lift, for the same muscle. `in-turn`: a
   * set of each by turns, for different muscles, so that one rests while the other works.
   */
  readonly kind: 'pair' | 'in-turn';
  /** From the end of one set to the first repetition of the other, 0 to 600. */
  readonly transitionSeconds: number;
}

/** How the last set of a lift goes on past lifting failure. */
export interface ChainIntent {
  /** After lifting to failure, in order. */
  readonly stages: readonly Exclude<Stage, LiftStage>[];
  /** Stops, pins or a rack set just below the lowest point and tried with the empty bar. */
  readonly stops?: boolean;
  /** The coach has switched on what is off by default for this person. Lifts no refusal. */
  readonly switchedOn?: boolean;
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
  /** Done in rounds with the next lift of the list. */
  readonly join?: JoinIntent;
  readonly chain?: ChainIntent;
  readonly overrules?: LiftOverrules;
}

/** What somebody fixes of a lift that is chosen for muscles. */
export interface ChosenOverrule {
  /** Id of the exercise that would be chosen. */
  readonly exercise: string;
  /** What is done in its place. */
  readonly by?: Pick<LiftIntent, 'exercise' | 'variant' | 'equipment'>;
  readonly overrules?: LiftOverrules;
}

/** Muscles to train, for which exercises are chosen. */
export interface MusclesIntent {
  readonly muscles: readonly MuscleId[];
  /** How every chosen lift is done. */
  readonly window: RepWindow;
  readonly tempo: Tempo;
  readonly sets: number;
  readonly restSeconds: number;
  readonly overrules?: readonly ChosenOverrule[];
}

/** What a coach wants of a session. */
export interface SessionIntent {
  /** The day of the session, `YYYY-MM-DD`. */
  readonly date: string;
  /** Unit in which loads are said. */
  readonly unit: Unit;
  /** In the order in which they are done; may be empty where muscles are named. */
  readonly lifts: readonly LiftIntent[];
  /** Trained after the lifts, as far as those do not move with them already. */
  readonly muscles?: MusclesIntent;
  /** Walking over and setting up between two exercises. */
  readonly changeSeconds: number;
  /** The session is to be no longer, from the first set-up to the end of the last set. */
  readonly minutesAtMost?: number;
  readonly overrules?: {
    /** The day of the next session for these muscles, `YYYY-MM-DD`. */
    readonly nextDate?: string;
  };
}
