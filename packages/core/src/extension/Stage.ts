import type { Exercise, HoldPosition } from '../anatomy/index.ts';
import type { Limits } from '../safety/index.ts';

/** Full-range repetitions until one cannot be finished. */
export interface LiftStage {
  readonly kind: 'lift';
}

/** Repetitions through the half of the range where the muscle is long. */
export interface PartRangeStage {
  readonly kind: 'part-range';
  readonly maxReps: number;
}

/** Load taken off, and full repetitions again, without rest. */
export interface LighterStage {
  readonly kind: 'lighter';
  /** New load as a share of the load before: 0.8 takes a fifth off. */
  readonly loadShare: number;
}

/** A short pause with the load put down, and full repetitions again. */
export interface PauseStage {
  readonly kind: 'pause';
  readonly seconds: number;
}

/** Full repetitions with a partner lifting what is missing. */
export interface AssistedStage {
  readonly kind: 'assisted';
  readonly reps: number;
}

/** The load held still until it slips, or until the time given. */
export interface HoldStage {
  readonly kind: 'hold';
  readonly at: HoldPosition['at'];
  readonly maxSeconds: number;
}

/** The load lowered slowly, brought back to the top without lifting it, and lowered again. */
export interface LowerStage {
  readonly kind: 'lower';
  readonly secondsEach: number;
  readonly maxLowerings: number;
}

/** One part of a set that goes on past lifting failure. */
export type Stage =
  | LiftStage
  | PartRangeStage
  | LighterStage
  | PauseStage
  | AssistedStage
  | HoldStage
  | LowerStage;

/** The kinds of stages, by name. */
export type StageKind = Stage['kind'];

/** What a chain needs to know of an exercise; every exercise of the library has it. */
export type ChainExercise = Pick<
  Exercise,
  'name' | 'holds' | 'wayBack' | 'atFailureAlone' | 'eccentricFactor'
>;

/** What a chain needs to know of what is allowed; from `@windlass/core/safety`. */
export type ChainLimits = Pick<
  Limits,
  'training' | 'failureChains' | 'longHolds' | 'forcedReps' | 'repsInReserve' | 'hardLowerings'
>;

/** Where, by whom and with what a chain is to be done. */
export interface ChainSetting {
  readonly exercise: ChainExercise;
  /** A partner who knows the lift is there and agrees to help. A stranger nearby is none. */
  readonly partner: boolean;
  /** Stops, pins or a rack set just below the lowest point, and tested with the empty bar. */
  readonly stops: boolean;
  readonly limits: ChainLimits;
  /** The coach has switched on what is off by default. Does not lift what is refused. */
  readonly switchedOn: boolean;
}
