export {
  hoursUntilReady,
  type ReadyHours,
  type RecoveryHabit,
  unknownHabit,
} from './hoursUntilReady.ts';
export { learnRecovery, type PerformanceReport } from './learnRecovery.ts';
export { type MuscleDose, muscleDose } from './muscleDose.ts';
export { type NotCounted, notCounted } from './notCounted.ts';
export type { RecoveryEffect, RecoveryReports, Soreness } from './RecoveryReports.ts';
export {
  type MuscleReadiness,
  type PastSession,
  type ReadinessOptions,
  readiness,
} from './readiness.ts';
export { recoveryModel } from './recoveryModel.ts';
export { reportEffects } from './reportEffects.ts';
export { type SharedMuscle, sharedMuscles } from './sharedMuscles.ts';
export type { TrainedSets, TrainingStatus } from './TrainedSets.ts';
export { unaccustomedShare } from './unaccustomedShare.ts';
