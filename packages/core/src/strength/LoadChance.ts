import type { Band } from '../basis/index.ts';
import type { Load } from '../load/index.ts';
import type { RepForecast } from './forecastReps.ts';

/** Anything that can be loaded: a bare load, or what equipment makes with how to make it. */
export interface HasLoad {
  readonly load: Load;
}

/** One load and how its set to failure would meet the rep window. */
export interface LoadChance<C extends HasLoad> {
  readonly choice: C;
  /** Probability of failure inside the window, before it and beyond it; sum 1. */
  readonly inside: number;
  readonly before: number;
  readonly beyond: number;
  readonly reps: Band;
  readonly setSeconds: Band | undefined;
  /** Load as a share of today's one-rep max. */
  readonly share: Band;
  readonly doubts: RepForecast['doubts'];
}
