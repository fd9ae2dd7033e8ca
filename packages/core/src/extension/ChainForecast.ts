import type { Band, Source } from '../basis/index.ts';
import type { FatigueRates, MuscleFatigue } from '../capacity/index.ts';
import type { ChainDose } from './chainDose.ts';
import type { ChainExercise, Stage } from './Stage.ts';

/** A chain, a load and a lifter. */
export interface ChainForecastInput {
  /** An allowed chain, from `planChain`. */
  readonly stages: readonly Stage[];
  readonly exercise: Pick<ChainExercise, 'holds' | 'wayBack' | 'eccentricFactor'>;
  /** Load as a share of the one-rep max, 0.2 to 1.1. */
  readonly intensity: number;
  /** Seconds under load of one full repetition, 1 to 60. */
  readonly secondsPerRep: number;
  /** The lifter's rep curve at 3 s a repetition and the spread of ln kappa; general when left out. */
  readonly curve?: {
    readonly kappa: number;
    readonly alpha: number;
    readonly kappaLogSd: number;
  };
  /** What the exercise has lost already, from `exerciseFatigue`; nothing when left out. */
  readonly fatigue?: MuscleFatigue;
  /** Rates of the joint that holds and lowers; the general fit when left out. */
  readonly rates?: FatigueRates;
  /** The same seed gives the same bands. */
  readonly seed: number;
}

/** What to expect of one stage. */
export interface StageForecast {
  readonly stage: Stage;
  /** Full repetitions, part repetitions or lowerings; null for a hold, which has only seconds. */
  readonly count: Band | null;
  readonly secondsUnderLoad: Band;
  /** Share of fresh lifting strength left after the stage. */
  readonly capacityLeft: Band;
  /** Chance that nothing of the stage is possible: not one repetition, lowering or second. */
  readonly chanceOfNone: number;
  /** Share of the load that a partner lifts, for each assisted repetition. */
  readonly help?: readonly Band[];
}

/** What to expect of a whole chain. */
export interface ChainForecast {
  readonly stages: readonly StageForecast[];
  /** Over all stages; attempts that failed are not timed. */
  readonly secondsUnderLoad: Band;
  /** Recovery that the set will cost, against a set to failure. */
  readonly dose: ChainDose;
  /** What the bands rest on, to be shown beside them. */
  readonly notes: readonly string[];
  readonly sources: readonly Source[];
}
