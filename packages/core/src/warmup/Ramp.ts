import type { Band, Source } from '../basis/index.ts';
import type { CapacityState, MuscleShares } from '../capacity/index.ts';
import type {
  Equipment,
  EquipmentNote,
  EquipmentUse,
  Handling,
  NoLoads,
  ReachableLoad,
} from '../equipment/index.ts';
import type { Load } from '../load/index.ts';
import type { SourcedRepCurve } from '../strength/index.ts';
import type { AboveWork } from './AboveWork.ts';

/** What a ramp is wanted for. */
export interface RampQuestion {
  readonly equipment: Equipment;
  readonly use?: EquipmentUse;
  /** The work load; the equipment has to be able to make it. */
  readonly work: Load;
  /** The work load as a share of today's one-rep max, 0.2 to 1. */
  readonly workShare: number;
  /** `new`: first months of lifting. */
  readonly experience: 'new' | 'trained';
  /** Seconds per warm-up repetition, 1 to 10; 2 when left out, brisk but controlled. */
  readonly secondsPerRep?: number;
  /** The lifter's rep curve at 3 seconds a repetition; the general one when left out. */
  readonly curve?: SourcedRepCurve;
  /** Muscles by share; all as one when left out. */
  readonly muscles?: MuscleShares;
  /** Capacity before the ramp; fresh when left out. */
  readonly start?: CapacityState;
  /** Share of this exercise's muscles that were already worked in this session, 0 to 1; 0 when left out. */
  readonly alreadyWarm?: number;
  /** A technical lift gets a ramp of its own, however warm the muscles are. */
  readonly technical?: boolean;
  /** The bar starts on the floor, so every step needs a full-size plate on each end. */
  readonly fromFloor?: boolean;
  /**
   * Handling one piece counts as much as a load that is this far off its target, in % of the work
   * load, 0 to 10; 2.5 when left out.
   */
  readonly percentOffPerPiece?: number;
  /** Seconds to handle one piece, 0 to 60; 4 when left out. */
  readonly secondsPerPiece?: number;
  /** Least capacity at the first work rep against no ramp at all, 0.5 to 0.99; 0.97 when left out. */
  readonly leastCapacity?: number;
  /** Ask for one repetition above the work load; off when left out. */
  readonly aboveWork?: {
    /** A partner or stops that can take the load. */
    readonly loadCanBeStopped: boolean;
  };
}

/** What a step is for: warm blood, practice of the movement, readiness for the load. */
export type RampPurpose = 'circulation' | 'rehearsal' | 'primer';

/** One set of the ramp. */
export interface RampStep {
  readonly purpose: RampPurpose;
  readonly load: ReachableLoad;
  /** Load as a share of the work load. */
  readonly shareOfWork: number;
  readonly reps: number;
  /** Under load. */
  readonly seconds: number;
  /** How the load is made, from the step before or from the empty bar. */
  readonly change: Handling;
  /** After the set, with the change of load that follows. */
  readonly restSeconds: number;
}

/** A whole ramp. */
export interface RampPlan {
  readonly kind: 'ramp';
  /** Lighter than the work load, each heavier than the one before; one at least. */
  readonly steps: readonly RampStep[];
  readonly aboveWork: AboveWork;
  /** The work load and how it is made from the last step. */
  readonly work: ReachableLoad;
  readonly changeToWork: Handling;
  readonly stripDown: Handling;
  /** Over all changes, from the empty bar and back. */
  readonly piecesHandled: number;
  /** From the first change of load to the first work rep. */
  readonly minutes: number;
  readonly reps: number;
  /** Capacity at the first work rep, as a share of what it would be without the ramp. */
  readonly capacityKept: Band;
  readonly notes: readonly EquipmentNote[];
  readonly sources: readonly Source[];
}

/** Nothing to ramp, and what to do instead. */
export interface NoRamp {
  readonly kind: 'no-ramp';
  readonly reason: 'work-is-the-lightest-load' | 'already-warm' | 'light-work' | 'as-asked';
  readonly message: string;
  readonly work: ReachableLoad;
  readonly changeToWork: Handling;
  readonly stripDown: Handling;
  readonly sources: readonly Source[];
}

/** No answer: the work load cannot be made here, or no load is known. */
export interface RampImpossible {
  readonly kind: 'none';
  readonly reason: 'work-load-not-reachable' | NoLoads['reason'];
  readonly message: string;
}

/** A ramp, a reason for none, or no answer. */
export type RampAnswer = RampPlan | NoRamp | RampImpossible;
