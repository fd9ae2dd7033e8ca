import type { Source } from '../basis/index.ts';

/**
 * How one lifter's repetitions to failure depend on the load, on one lift, at one pace:
 * `reps = 1 + kappa * (capacity - share) / share^alpha`.
 */
export interface RepCurve {
  /** Endurance constant: the larger, the more repetitions at the same share. No unit. */
  readonly kappa: number;
  /** Bend towards light loads. No unit; 0.25 to 2. */
  readonly alpha: number;
}

/** A curve from published rows, with what it rests on. */
export interface SourcedRepCurve extends RepCurve {
  /** Standard deviation of ln kappa between people. */
  readonly kappaLogSd: number;
  readonly sources: readonly Source[];
}
