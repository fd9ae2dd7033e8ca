import type { MuscleFatigue } from '../capacity/index.ts';
import type { ChainForecastInput } from './ChainForecast.ts';
import type { ChainWork } from './doWork.ts';

/** What one drawn lifter does in one stage. */
export interface StageRun {
  /** Whole repetitions or lowerings; seconds of a hold. */
  readonly count: number;
  readonly secondsUnderLoad: number;
  readonly work: readonly ChainWork[];
  readonly fatigue: MuscleFatigue;
}

/** What is the same for every drawn lifter. */
export type ChainSetup = Pick<ChainForecastInput, 'exercise' | 'secondsPerRep'>;
