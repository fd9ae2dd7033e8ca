import { type Exercise, sharesOf } from '../anatomy/index.ts';

/**
 * How much of their work two exercises have in common: the sum over muscles of the smaller share.
 *
 * @returns 0 when they share no muscle, 1 when the shares are the same.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { muscleOverlap } from '@windlass/core/exchange';
 * const [curl, extension] = ['dumbbell-curl', 'leg-extension'].map((id) => findExercise(id));
 * const both = curl?.kind === 'found' && extension?.kind === 'found';
 * both && muscleOverlap(curl.exercise, extension.exercise); // 0
 * ```
 */
export function muscleOverlap(a: Exercise, b: Exercise): number {
  const other: Readonly<Record<string, number>> = sharesOf(b);
  return Object.entries(sharesOf(a)).reduce(
    (sum, [muscle, share]) => sum + Math.min(share, other[muscle] ?? 0),
    0,
  );
}
