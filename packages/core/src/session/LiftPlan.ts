import type { MuscleId } from '../anatomy/index.ts';
import type { Band } from '../basis/index.ts';
import type { ReachableLoad } from '../equipment/index.ts';
import type { LoadChance } from '../strength/index.ts';
import type { RampAnswer } from '../warmup/index.ts';
import type { ClientSet } from './Client.ts';
import type { LiftIntent } from './Intent.ts';
import type { JoinedLift } from './JoinedLifts.ts';
import type { Lift, NoLift } from './liftOf.ts';
import type { PlannedChain } from './PlannedChain.ts';

/** One work set: what it will probably give, with the fatigue of everything before it. */
export interface WorkSet {
  /** Repetitions to do: to lifting failure, or to the repetitions that are to be left. */
  readonly reps: Band;
  /** Seconds under load, one side of a one-sided lift. */
  readonly seconds: Band;
  /** Share of fresh strength at its start. */
  readonly capacity: number;
  /** Probability that it ends inside the window. */
  readonly chance: number;
}

/** Why the work load is the one it is. */
export type LoadReason = 'best-chance' | 'careful-first' | 'capped' | 'fixed';

/** What was overruled in a lift, each with what would have been chosen. */
export interface LiftOverruled {
  /** Id of the exercise. */
  readonly exercise?: { readonly chosen: string };
  /** Id of a set-up, or `usual`. */
  readonly variant?: { readonly chosen: string };
  /** Nothing where no load would have been found. */
  readonly load?: { readonly chosen: ReachableLoad | undefined };
  readonly sets?: { readonly chosen: number };
  readonly restSeconds?: { readonly chosen: number };
  readonly warmUp?: { readonly chosen: RampAnswer };
}

/** A wish that was not followed: the plan is as if it had not been made. */
export interface Refusal {
  readonly what:
    | 'exercise'
    | 'variant'
    | 'load'
    | 'sets'
    | 'rest'
    | 'warm-up'
    | 'join'
    | 'chain'
    | 'muscles'
    | 'next-date';
  /** Stable: `session.load-not-here`. */
  readonly code: string;
  /** Why, and what would be right. */
  readonly message: string;
}

/** What a lift's numbers rest on. */
export interface LiftBasis {
  readonly sets: number;
  readonly lastDate?: string;
  readonly passedOver: readonly { readonly set: ClientSet; readonly why: string }[];
}

/** Why an exercise was chosen for muscles that were wanted. */
export interface ChosenFor {
  readonly muscles: readonly MuscleId[];
  readonly reasons: readonly string[];
}

/** A lift with its load. */
export interface PlannedLift {
  readonly kind: 'planned';
  /** With the intent that counts: overruled values and what a time limit left of it are in it. */
  readonly lift: Lift;
  readonly secondsPerRep: number;
  /** Today's one-rep max in kg; left out where no maximum is to be named. */
  readonly oneRepMaxKg?: Band;
  /** Repetitions that are to be left at the end of every set; 0 is lifting failure. */
  readonly repsInReserve: number;
  readonly work: LoadChance<ReachableLoad>;
  readonly reason: LoadReason;
  readonly lighter?: LoadChance<ReachableLoad>;
  readonly heavier?: LoadChance<ReachableLoad>;
  readonly warmUp: RampAnswer;
  readonly sets: readonly WorkSet[];
  /** Where its sets are done in rounds with those of another lift. */
  readonly join?: JoinedLift;
  /** Where the last set goes on past lifting failure. */
  readonly chain?: PlannedChain;
  readonly basis: LiftBasis;
  /** Where it was chosen for muscles. */
  readonly chosenFor?: ChosenFor;
  readonly overruled: LiftOverruled;
  readonly refused: readonly Refusal[];
}

/** A lift without history: how to find its load in this session. */
export interface FindingLift {
  readonly kind: 'finding';
  readonly lift: Lift;
  readonly secondsPerRep: number;
  readonly firstTry: ReachableLoad;
  readonly reps: number;
  readonly stopWithLeft: number;
  readonly mostTries: number;
  readonly basis: LiftBasis;
  /** Where it was chosen for muscles. */
  readonly chosenFor?: ChosenFor;
  readonly overruled: LiftOverruled;
  readonly refused: readonly Refusal[];
}

/** An exercise to do instead of one that is left out. */
export interface LiftExchange {
  readonly exercise: string;
  /** Id of the set-up that it needs. */
  readonly variant?: string;
  /** Id of the equipment that loads it here. */
  readonly equipment: string;
  /** Exercise and set-up, and the equipment, for people. */
  readonly name: string;
  readonly equipmentName: string;
  /** What speaks for it, and what against it. */
  readonly reasonsFor: readonly string[];
  readonly reasonsAgainst: readonly string[];
}

/** A lift that was asked for and is not done, and why. */
export interface LeftOutLift {
  readonly kind: 'left-out';
  readonly intent: LiftIntent;
  readonly reason: NoLift['reason'] | 'limits' | 'no-load-for-window' | 'no-time';
  readonly message: string;
  /** What this gym and this person's limits allow instead, best first; three at most. */
  readonly exchanges: readonly LiftExchange[];
}

/** What became of a lift that was wanted. */
export type LiftPlan = PlannedLift | FindingLift | LeftOutLift;
