export { applyVariant } from './applyVariant.ts';
export { canLoad } from './canLoad.ts';
export { type CoverageRow, coverage } from './coverage.ts';
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
export { exerciseSources } from './exerciseSources.ts';
export { exercises } from './exercises.ts';
export { type FoundExercise, findExercise } from './findExercise.ts';
export { hasStations } from './hasStations.ts';
export { heldWeights } from './heldWeights.ts';
export type { JointAction, JointId, LoadedPosition, PositionId } from './Joint.ts';
export { jointsLoaded } from './jointsLoaded.ts';
export { loadedPositions } from './loadedPositions.ts';
export { type Movement, movements } from './Movement.ts';
export type { ExerciseShares, Muscle, MuscleGroup, MuscleId } from './Muscle.ts';
export { muscleSource, muscles } from './muscles.ts';
export { sharesOf } from './sharesOf.ts';
export { stationStandIns } from './stationStandIns.ts';
export { validateExercises } from './validateExercises.ts';
