export { addFatigue } from './addFatigue.ts';
export type { CapacityState, MuscleFatigue, MuscleShares } from './CapacityState.ts';
export type {
  CapacityLine,
  CapacityPoint,
  CapacityStep,
  CapacityTrace,
  CapacityTraceInput,
  LineCrossing,
} from './CapacityStep.ts';
export { capacityFor } from './capacityFor.ts';
export { capacityRateSources, REST_RECOVERY_PER_SECOND, SLOW_SHARE } from './capacityRates.ts';
export { capacityTrace } from './capacityTrace.ts';
export { depositReps } from './depositReps.ts';
export { depositSustained, type SustainedWork } from './depositSustained.ts';
export { exerciseFatigue } from './exerciseFatigue.ts';
export type { FatigueRates, JointFatigueRates, StudiedJoint } from './FatigueRates.ts';
export { freshCapacity } from './freshCapacity.ts';
export { jointFatigueRates } from './jointFatigueRates.ts';
export { type RepCostInput, repCost } from './repCost.ts';
export { type RepsOverSets, repsOverSets, type SetsToFailure } from './repsOverSets.ts';
export { repsUntil } from './repsUntil.ts';
export { restCapacity } from './restCapacity.ts';
export { type SustainedInput, sustainedFatigue } from './sustainedFatigue.ts';
export { type SustainedSeconds, sustainedSeconds } from './sustainedSeconds.ts';
