export type {
  AtFailureAlone,
  EnduranceClass,
  Exercise,
  HoldPosition,
  LoadKind,
  Station,
  Support,
  Variant,
  WayBack,
} from './Exercise.ts';
export { FREE_WEIGHT_ECCENTRIC, MACHINE_ECCENTRIC } from './eccentricFactors.ts';
export { exercises } from './exercises.ts';
export { type FoundExercise, findExercise } from './findExercise.ts';
export type { JointAction, JointId, LoadedPosition, PositionId } from './Joint.ts';
export type { Movement } from './Movement.ts';
export type { ExerciseShares, Muscle, MuscleGroup, MuscleId } from './Muscle.ts';
export { sharesOf } from './sharesOf.ts';
