import type { Exercise, Variant } from './Exercise.ts';
import type { ExerciseShares } from './Muscle.ts';

/**
 * How an exercise spreads its work over all its muscles, prime movers and helpers together.
 *
 * @param exercise any exercise.
 * @param variant its set-up; one that moves no work leaves the shares as they are.
 * @returns shares between 0 and 1 that add up to 1.
 * @example
 * ```ts
 * import { findExercise, sharesOf } from '@windlass/core/anatomy';
 * const found = findExercise('leg-extension');
 * found.kind === 'found' && sharesOf(found.exercise); // { vasti: 0.7, 'rectus-femoris': 0.3 }
 * ```
 */
export function sharesOf(
  exercise: Pick<Exercise, 'direct' | 'indirect'>,
  variant?: Variant,
): ExerciseShares {
  const { direct, indirect } = variant?.direct ? variant : exercise;
  return { ...direct, ...indirect };
}
