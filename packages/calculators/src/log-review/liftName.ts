import { reviewLifts } from '../precomputed/reviewLifts.ts';

/** What an exercise of a log is called: by the library, or as it was written. */
export function liftName(exercise: string): string {
  return reviewLifts.find(({ id }) => id === exercise)?.name ?? exercise;
}
