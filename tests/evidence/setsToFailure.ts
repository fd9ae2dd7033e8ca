import {
  capacityFor,
  depositReps,
  freshCapacity,
  repCost,
  repsUntil,
  restCapacity,
} from '../../packages/core/src/capacity/index.ts';
import type { RepCurve } from '../../packages/core/src/strength/index.ts';

const shares = { quadriceps: 1 };

/** Repetitions of sets to failure at these shares of the one-rep max, with one rest between. */
export function setsToFailure(
  intensities: readonly number[],
  restSeconds: number,
  curve: RepCurve,
): readonly number[] {
  let state = freshCapacity();
  return intensities.map((intensity, index) => {
    if (index > 0) state = restCapacity(state, restSeconds);
    const costPerRep = repCost({ intensity, ...curve });
    const reps = repsUntil(capacityFor(state, shares), intensity, costPerRep);
    state = depositReps(state, shares, reps, costPerRep);
    return reps;
  });
}

/** The curve that gives so many repetitions at a share of the one-rep max. */
export function curveThrough(share: number, reps: number): RepCurve {
  return { kappa: ((reps - 1) * Math.sqrt(share)) / (1 - share), alpha: 0.5 };
}
