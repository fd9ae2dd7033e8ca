import type { ReachableLoad } from '../equipment/index.ts';
import type { Load } from '../load/index.ts';

/** What to choose from, and what for. */
export interface RampProblem {
  /** Wished loads of the steps, lightest first. */
  readonly targets: readonly Load[];
  /** All loadings below the work load. */
  readonly ways: readonly ReachableLoad[];
  /** All loadings of the work load. */
  readonly workWays: readonly ReachableLoad[];
  /** Loadings for one step above the work load, between the last step and the work. */
  readonly above?: { readonly target: Load; readonly ways: readonly ReachableLoad[] };
  readonly work: Load;
  /** Cost of handling one piece; see {@link RampChoice}. */
  readonly pieceCost: number;
  /** Cost of a jump that is larger than the one before it. */
  readonly growthCost: number;
}

/**
 * The best ramp as a whole.
 *
 * Its cost is the sum of: for each target the square of how far its load is off, in thousandths of
 * the work load; the pieces handled from the empty bar over all steps to the work load and back to
 * the empty bar, times `pieceCost`; and `growthCost` for each jump that is larger than the jump
 * before it by more than 1 % of the work load. All three are whole numbers.
 */
export interface RampChoice {
  /** Strictly heavier from step to step. */
  readonly steps: readonly ReachableLoad[];
  readonly above?: ReachableLoad;
  readonly work: ReachableLoad;
  readonly cost: number;
}
