import { type Exercise, exercises } from '@windlass/core/anatomy';

/** What a review of a log reads of an exercise. */
export type ReviewLift = Pick<Exercise, 'id' | 'name' | 'direct' | 'indirect' | 'endurance'> &
  Partial<Pick<Exercise, 'movedShare'>>;

/** Exercises whose repetitions are counted and whose load is known. */
export const reviewLifts: readonly ReviewLift[] = exercises
  .filter(({ timed, loads }) => !timed && loads.some((load) => load !== 'band'))
  .map(({ id, name, direct, indirect, endurance, movedShare }) => ({
    id,
    name,
    direct,
    indirect,
    endurance,
    ...(movedShare ? { movedShare } : {}),
  }));
