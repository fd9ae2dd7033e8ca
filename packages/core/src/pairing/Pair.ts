import type { Exercise, MuscleId } from '../anatomy/index.ts';
import type { Band, Source } from '../basis/index.ts';
import type { CapacityState, CapacityStep } from '../capacity/index.ts';
import type { Load } from '../load/index.ts';
import type { Caution } from '../safety/index.ts';
import type { RepCurve } from '../strength/index.ts';

/** What a pair needs to know of an exercise; every exercise of the library has it. */
export type PairExercise = Pick<
  Exercise,
  'id' | 'name' | 'direct' | 'indirect' | 'span' | 'endurance'
>;

/** An isolation set and, after a few steps, a set of a compound lift. */
export interface PairInput {
  /** The muscles that the pair is for. */
  readonly target: readonly MuscleId[];
  /** Helpers that give out before the target on the compound lift, if the lifter knows. */
  readonly limiting?: readonly MuscleId[];
  readonly isolation: {
    readonly exercise: PairExercise;
    /** Repetitions done, 1 to 100. */
    readonly reps: number;
    /** Repetitions left at the end, 0 (failure) to 10. */
    readonly repsLeft: number;
    readonly secondsPerRep: number;
    /** The lifter's curve at 3 s a repetition; that of the kind of exercise when left out. */
    readonly curve?: RepCurve;
  };
  readonly compound: {
    readonly exercise: PairExercise;
    /** A set to failure without the isolation set before it. */
    readonly usual: { readonly load: Load; readonly reps: number };
    readonly secondsPerRep: number;
    readonly curve?: RepCurve;
  };
  /** From the end of the isolation set to the first repetition of the compound lift. */
  readonly transitionSeconds: number;
  /** State before the pair; fresh when left out. */
  readonly start?: CapacityState;
}

/** Why a pair is not offered. */
export interface PairRefusal {
  /** Stable: `pairing.helper-spent`. */
  readonly code: string;
  readonly why: string;
  readonly instead: string;
  readonly sources: readonly Source[];
}

/** The second lift of a pair, and what is to be said about it. */
export interface PairForecast {
  /** Load for the usual repetitions, as a share of the usual load. */
  readonly loadShare: Band;
  readonly loadKg: Band;
  /** Whole repetitions with the usual load. */
  readonly repsAtUsualLoad: Band;
  /** Share of the compound lift's fresh strength likely left at its first repetition, with and without the isolation set. */
  readonly capacity: { readonly without: number; readonly with: number };
  /** How much of what the isolation set took for the moment is back when the compound lift begins, 0 to 1. */
  readonly recovered: number;
  /** After the first try: this share of the load for each repetition more or fewer than wanted. */
  readonly sharePerRep: number;
  readonly cautions: readonly Caution[];
  /** The isolation set and the transition, for `capacityTrace`. */
  readonly steps: readonly CapacityStep[];
  readonly sources: readonly Source[];
}
