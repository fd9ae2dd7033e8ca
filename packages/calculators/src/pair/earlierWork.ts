import {
  type CapacityState,
  freshCapacity,
  repCost,
  repsOverSets,
  restCapacity,
} from '@windlass/core/capacity';
import { enduranceCurves, shareForReps } from '@windlass/core/strength';
import { pairLifts } from '../precomputed/pairLifts.ts';
import { exerciseOf } from '../shared/exerciseFields.ts';
import type { PairInputs } from './fields.ts';

const BETWEEN_SETS_SECONDS = 120;

/** What sets of another exercise have left tired by the time the pair begins. */
export function earlierWork(input: PairInputs): CapacityState {
  if (input.earlier === 'no') return freshCapacity();
  const { direct, indirect, endurance } = exerciseOf(pairLifts, input.earlierExercise);
  const curve = enduranceCurves[endurance];
  const intensity = shareForReps(input.earlierReps, curve);
  const { end } = repsOverSets({
    intensity,
    costPerRep: repCost({ intensity, ...curve }),
    restsSeconds: Array.from({ length: input.earlierSets - 1 }, () => BETWEEN_SETS_SECONDS),
    shares: { ...direct, ...indirect },
  });
  return restCapacity(end, input.earlierMinutes * 60);
}
