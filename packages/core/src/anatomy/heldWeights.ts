import type { Exercise } from './Exercise.ts';

/**
 * How many dumbbells, kettlebells or handles are the load: one in each hand, or a single one.
 *
 * @param exercise with its set-up applied; only meaningful where it takes such weights.
 * @example
 * ```ts
 * import { findExercise, heldWeights } from '@windlass/core/anatomy';
 * const row = findExercise('one-arm-dumbbell-row');
 * row.kind === 'found' && heldWeights(row.exercise); // 1
 * ```
 */
export function heldWeights(exercise: Exercise): 1 | 2 {
  return exercise.heldWeights ?? (exercise.hands === 1 ? 1 : 2);
}
