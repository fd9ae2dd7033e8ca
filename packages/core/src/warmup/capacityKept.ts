import type { Band } from '../basis/index.ts';
import {
  type CapacityState,
  capacityFor,
  depositReps,
  type MuscleShares,
  repCost,
  restCapacity,
} from '../capacity/index.ts';
import { kappaAtTempo, type SourcedRepCurve } from '../strength/index.ts';

/** One warm-up set with the rest after it. */
export interface WarmupSet {
  readonly reps: number;
  readonly secondsPerRep: number;
  /** Load as a share of the one-rep max, above 0. */
  readonly shareOfMax: number;
  readonly restSeconds: number;
}

/** Who does it, in what state. */
export interface WarmupState {
  readonly muscles: MuscleShares;
  readonly start: CapacityState;
  readonly curve: SourcedRepCurve;
}

/** Standard deviations that enclose 80 % of a normal distribution. */
const DEVIATIONS_80 = 1.2816;

/**
 * Capacity at the first work rep after these sets, as a share of what it would be had the same time
 * been rested. The band spans the endurance constants of 80 % of people.
 */
export function capacityKept(
  sets: readonly WarmupSet[],
  { muscles, start, curve }: WarmupState,
): Band {
  const keptAt = (deviations: number): number => {
    const kappa = curve.kappa * Math.exp(deviations * curve.kappaLogSd);
    let [after, rested] = [start, start];
    for (const { reps, secondsPerRep, shareOfMax, restSeconds } of sets) {
      const atPace = kappaAtTempo(kappa, secondsPerRep).kappa.likely;
      const cost = repCost({ intensity: shareOfMax, kappa: atPace, alpha: curve.alpha });
      after = restCapacity(depositReps(after, muscles, reps, cost), restSeconds);
      rested = restCapacity(rested, reps * secondsPerRep + restSeconds);
    }
    return capacityFor(after, muscles) / capacityFor(rested, muscles);
  };
  return {
    low: keptAt(-DEVIATIONS_80),
    likely: keptAt(0),
    high: keptAt(DEVIATIONS_80),
    level: 0.8,
  };
}
