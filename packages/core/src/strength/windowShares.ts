import { requireNumber } from '../basis/index.ts';
import { generalCurve } from './generalCurve.ts';
import type { RepCurve } from './RepCurve.ts';
import { shareForReps } from './shareForReps.ts';

/** Failure is wanted on one of these repetitions, both ends included. */
export interface RepWindow {
  readonly minReps: number;
  readonly maxReps: number;
}

/** What a rep window asks of the load, as shares of the one-rep max. */
export interface WindowShares {
  /** Lightest share whose mean rounds into the window. */
  readonly lightest: number;
  /** Share that fails in the middle of the window. */
  readonly middle: number;
  /** Heaviest share whose mean rounds into the window. */
  readonly heaviest: number;
}

/**
 * What a rep window asks as shares of the one-rep max.
 *
 * The curve gives means over sets, so a count of n stands for means from n - 0.5 to n + 0.5; a
 * window of 5 to 7 is asked of means from 4.5 to 7.5. A window that begins at one repetition has
 * the capacity as its heaviest share.
 *
 * @param window whole repetitions, 1 to 200, minReps at most maxReps.
 * @param curve kappa at the pace of the set.
 * @param capacity share of fresh strength that is left, above 0 to 1.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { windowShares } from '@windlass/core/strength';
 * windowShares({ minReps: 1, maxReps: 1 }).heaviest; // 1
 * windowShares({ minReps: 10, maxReps: 12 }, { kappa: 40, alpha: 1 }).middle; // 0.8
 * ```
 */
export function windowShares(
  window: RepWindow,
  curve: RepCurve = generalCurve,
  capacity = 1,
): WindowShares {
  const { minReps, maxReps } = window;
  requireNumber('windowShares', 'minReps', minReps, 1, 200);
  requireNumber('windowShares', 'maxReps', maxReps, minReps, 200);
  return {
    lightest: shareForReps(maxReps + 0.5, curve, capacity),
    middle: shareForReps((minReps + maxReps) / 2, curve, capacity),
    heaviest: shareForReps(Math.max(1, minReps - 0.5), curve, capacity),
  };
}
