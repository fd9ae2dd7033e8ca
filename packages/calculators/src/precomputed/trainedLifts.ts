import { type Exercise, exercises } from '@windlass/core/anatomy';

/** What recovery reads of an exercise. */
export type TrainedLift = Pick<Exercise, 'id' | 'name' | 'direct' | 'indirect'>;

/** Every exercise, for what it trains. */
export const trainedLifts: readonly TrainedLift[] = exercises.map(
  ({ id, name, direct, indirect }) => ({ id, name, direct, indirect }),
);
