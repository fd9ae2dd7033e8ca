import { findExercise } from '@windlass/core/anatomy';

/** What an exercise of the list is called; a name of one's own stays as it is. */
export function exerciseName(id: string): string {
  const found = findExercise(id);
  return found.kind === 'found' ? found.exercise.name : id;
}
