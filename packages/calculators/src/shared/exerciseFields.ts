import { type Exercise, exercises, findExercise } from '@windlass/core/anatomy';
import type { ChoiceField } from '../fields/Field.ts';

/** A choice among the exercises of the library. */
export function exerciseField(
  face: { readonly label: string; readonly help: string; readonly default: string },
  isOffered: (exercise: Exercise) => boolean = () => true,
): ChoiceField {
  const options = exercises.filter(isOffered).map(({ id, name }) => ({ id, label: name }));
  return { kind: 'choice', ...face, options };
}

/** The exercise with an id that a choice has let through. */
export function exerciseOf(id: string): Exercise {
  const found = findExercise(id);
  if (found.kind === 'unknown') throw new RangeError(`exerciseOf: no exercise ${id}`);
  return found.exercise;
}
