import type { MuscleId } from '@windlass/core/anatomy';
import { muscleNames } from '../precomputed/pairLifts.ts';

/** How coaches call a muscle. */
export function muscleName(muscle: MuscleId): string {
  return muscleNames[muscle] ?? muscle;
}
