export type { CapacityState, MuscleFatigue, MuscleShares } from './CapacityState.ts';
export { capacityFor } from './capacityFor.ts';
export { capacityRateSources, REST_RECOVERY_PER_SECOND, SLOW_SHARE } from './capacityRates.ts';
export { depositReps } from './depositReps.ts';
export { freshCapacity } from './freshCapacity.ts';
export { type RepCostInput, repCost } from './repCost.ts';
export { type RepsOverSets, repsOverSets, type SetsToFailure } from './repsOverSets.ts';
export { repsUntil } from './repsUntil.ts';
export { restCapacity } from './restCapacity.ts';
