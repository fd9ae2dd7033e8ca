import type { Band } from '../basis/index.ts';
import type { ReachableLoad } from '../equipment/index.ts';
import type { Unit } from '../load/index.ts';
import type { Adviser, Caution, StopRule } from '../safety/index.ts';
import type { LoadChance } from '../strength/index.ts';
import type { RampAnswer } from '../warmup/index.ts';
import type { ClientSet } from './Client.ts';
import type { LiftIntent } from './Intent.ts';
import type { Lift, NoLift } from './liftOf.ts';

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
export type LoadReason = 'best-chance' | 'careful-first' | 'capped';

/** A lift with its load. */
export interface PlannedLift {
  readonly kind: 'planned';
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
  readonly basis: LiftBasis;
}

/** What a lift's numbers rest on. */
export interface LiftBasis {
  readonly sets: number;
  readonly lastDate?: string;
  readonly passedOver: readonly { readonly set: ClientSet; readonly why: string }[];
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
}

/** A lift that was asked for and is not done, and why. */
export interface LeftOutLift {
  readonly kind: 'left-out';
  readonly intent: LiftIntent;
  readonly reason: NoLift['reason'] | 'limits' | 'no-load-for-window';
  readonly message: string;
}

/** What became of a lift that was wanted. */
export type LiftPlan = PlannedLift | FindingLift | LeftOutLift;

/** A stretch of the session. `lift` counts into the plan's lifts; `step` into its ramp or sets. */
export interface TimelineItem {
  readonly kind: 'change' | 'warm-up' | 'work' | 'rest';
  readonly lift: number;
  readonly step: number;
  readonly startSeconds: number;
  readonly seconds: number;
}

/** The length of a session, in minutes, with its parts. No rest follows the last set. */
export interface SessionMinutes {
  readonly change: number;
  readonly warmUp: number;
  readonly work: number;
  readonly rest: number;
  readonly total: number;
}

/** A whole session. */
export interface PlannedSession {
  readonly kind: 'session';
  readonly clientName: string;
  readonly gymName: string;
  readonly date: string;
  readonly unit: Unit;
  readonly lifts: readonly LiftPlan[];
  readonly timeline: readonly TimelineItem[];
  readonly minutes: SessionMinutes;
  readonly cautions: readonly Caution[];
  readonly stopRules: readonly StopRule[];
}

/** No session before somebody was asked. */
export interface NoSession {
  readonly kind: 'ask-first';
  readonly clientName: string;
  readonly date: string;
  readonly reasons: readonly string[];
  readonly ask: readonly Adviser[];
  readonly cautions: readonly Caution[];
}

/** A session, or the question that comes before one. */
export type SessionPlan = PlannedSession | NoSession;
