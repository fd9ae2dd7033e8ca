import { closestWords } from './closestWords.ts';
import type { Exercise } from './Exercise.ts';
import { exercises } from './exercises.ts';

/** An exercise, or near misses of its id. */
export type FoundExercise =
  | { readonly kind: 'found'; readonly exercise: Exercise }
  | {
      readonly kind: 'unknown';
      readonly id: string;
      /** The three nearest ids of the list, nearest first; none when the list is empty. */
      readonly nearest: readonly string[];
    };

/**
 * The exercise with an id, or the ids that look most like it.
 *
 * @param id such as `chin-up`.
 * @param list where to look: the library's exercises unless given.
 * @returns `found`, or `unknown` with up to three near misses; never throws.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * const found = findExercise('leg-pres');
 * found.kind === 'unknown' && found.nearest[0]; // 'leg-press'
 * ```
 */
export function findExercise(id: string, list: readonly Exercise[] = exercises): FoundExercise {
  const exercise = list.find((candidate) => candidate.id === id);
  if (exercise) return { kind: 'found', exercise };
  const ids = list.map((candidate) => candidate.id);
  return { kind: 'unknown', id, nearest: closestWords(id, ids, 3) };
}
