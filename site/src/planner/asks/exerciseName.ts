import { findExercise } from '@windlass/core/anatomy';
import { words } from './words.ts';

/** What an exercise is called; an id that is not in the list is shown as it is. */
export function exerciseName(id: string): string {
  const found = findExercise(id);
  return found.kind === 'found' ? found.exercise.name : words.asks.unknownExercise(id);
}
