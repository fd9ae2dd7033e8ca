import type { CapacityState, MuscleShares } from './CapacityState.ts';
import type { SustainedWork } from './depositSustained.ts';

/** One thing done, or a pause, on the time line of a trace. */
export type CapacityStep =
  | {
      readonly kind: 'reps';
      readonly shares: MuscleShares;
      readonly reps: number;
      readonly secondsPerRep: number;
      readonly costPerRep: number;
    }
  | ({ readonly kind: 'sustain'; readonly shares: MuscleShares } & SustainedWork)
  | { readonly kind: 'rest'; readonly seconds: number };

/** A capacity that a kind of work needs: the lift, the hold, the lowering of a load. */
export interface CapacityLine {
  readonly id: string;
  readonly capacity: number;
}

/** The capacity at one moment. */
export interface CapacityPoint {
  readonly seconds: number;
  readonly capacity: number;
}

/** A moment at which the capacity passed a line. */
export interface LineCrossing {
  readonly line: string;
  readonly seconds: number;
  readonly direction: 'down' | 'up';
}

/** What is done, and whose capacity is drawn. */
export interface CapacityTraceInput {
  /** The exercise whose capacity is drawn, by its shares. */
  readonly shares: MuscleShares;
  readonly steps: readonly CapacityStep[];
  readonly lines?: readonly CapacityLine[];
  /** State at second 0; fresh when left out. */
  readonly start?: CapacityState;
}

/** Capacity over time, for a chart. */
export interface CapacityTrace {
  /** In order of time; every step begins and ends on one. */
  readonly points: readonly CapacityPoint[];
  /** Second at which each step begins, and one more: the end. */
  readonly stepStarts: readonly number[];
  readonly crossings: readonly LineCrossing[];
  readonly end: CapacityState;
}
