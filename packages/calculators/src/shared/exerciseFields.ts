import type { ChoiceField } from '../fields/Field.ts';

type Named = { readonly id: string; readonly name: string };

/** A choice among exercises. */
export function exerciseField(
  face: { readonly label: string; readonly help: string; readonly default: string },
  list: readonly Named[],
): ChoiceField {
  const options = list.map(({ id, name }) => ({ id, label: name }));
  return { kind: 'choice', ...face, options };
}

/** The exercise with an id that a choice among the same list has let through. */
export function exerciseOf<One extends Named>(list: readonly One[], id: string): One {
  const found = list.find((exercise) => exercise.id === id);
  if (!found) throw new RangeError(`exerciseOf: no exercise ${id}`);
  return found;
}
