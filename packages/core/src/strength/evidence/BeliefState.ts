import type { LogDensity } from '../grid/Axis.ts';
import type { PerformedSet } from '../PerformedSet.ts';
import type { Cells } from './planeAround.ts';

/** The belief on a day, with what a later set on the same day needs. */
export interface BeliefState {
  readonly day: number;
  readonly usual: LogDensity;
  readonly today: LogDensity;
  readonly before: LogDensity;
  readonly sets: readonly PerformedSet[];
}

/** How sessions are learned. */
export interface LearnSetting {
  readonly alpha: number;
  /** True when breaks between sessions were trained through. */
  readonly trained: boolean;
  readonly cells: Cells;
}
