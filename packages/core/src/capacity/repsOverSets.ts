import { requireNumber } from '../basis/index.ts';
import type { CapacityState, MuscleShares } from './CapacityState.ts';
import { capacityFor } from './capacityFor.ts';
import { depositReps } from './depositReps.ts';
import { freshCapacity } from './freshCapacity.ts';
import { repsUntil } from './repsUntil.ts';
import { restCapacity } from './restCapacity.ts';

/** Several sets of one exercise with one load. */
export interface SetsToFailure {
  /** Load as a share of the one-rep max, the same in every set. */
  readonly intensity: number;
  /** Capacity per rep, from `repCost`. */
  readonly costPerRep: number;
  /** Rest before the second set, before the third, and so on; one set more than rests is done. */
  readonly restsSeconds: readonly number[];
  readonly shares: MuscleShares;
  /** State before the first set; fresh when left out. */
  readonly start?: CapacityState;
}

/** Reps of each set, not rounded, and the state after the last. */
export interface RepsOverSets {
  readonly reps: readonly number[];
  readonly end: CapacityState;
}

/**
 * Reps of several sets of one exercise, each to lifting failure, with rests between.
 *
 * Every set ends with the same capacity; the rests bring back the fast part of what was lost, and
 * the slow part grows, so with equal rests no set has more reps than the one before.
 *
 * @returns model means, to be read with the spread between people: within about one rep of
 *   three knee-extension sets at 80 % with 1 and 3 min rest (Pereira 2007).
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { repsOverSets } from '@windlass/core/capacity';
 * const { reps } = repsOverSets({
 *   intensity: 0.75,
 *   costPerRep: 0.025,
 *   restsSeconds: [60, 60],
 *   shares: { quadriceps: 1 },
 * });
 * reps.map(Math.floor); // [11, 4, 4]
 * ```
 */
export function repsOverSets({
  intensity,
  costPerRep,
  restsSeconds,
  shares,
  start = freshCapacity(),
}: SetsToFailure): RepsOverSets {
  requireNumber('repsOverSets', 'intensity', intensity, 0);
  const reps: number[] = [];
  let state = start;
  for (const restSeconds of [0, ...restsSeconds]) {
    state = restCapacity(state, restSeconds);
    const done = repsUntil(capacityFor(state, shares), intensity, costPerRep);
    reps.push(done);
    state = depositReps(state, shares, done, costPerRep);
  }
  return { reps, end: state };
}
