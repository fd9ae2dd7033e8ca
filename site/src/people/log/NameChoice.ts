import { canLoad, exercises, findExercise } from '@windlass/core/anatomy';
import type { Equipment } from '@windlass/core/equipment';
import type { LoggedSet } from '@windlass/core/progress';

/** What a name in a log stands for. */
export interface NameChoice {
  /** Id of an exercise of the list; nothing where the name stays. */
  readonly exercise: string;
  /** Id of a piece of equipment; nothing where nobody says. */
  readonly equipment: string;
}

export type NameChoices = Readonly<Record<string, NameChoice>>;

/** What a name stands for without a doubt: an exercise called so, and what that is done on. */
export function choiceFor(name: string, equipment: readonly Equipment[]): NameChoice {
  const wanted = plain(name);
  const called = exercises.find((one) => plain(one.id) === wanted || plain(one.name) === wanted);
  return called === undefined
    ? { exercise: '', equipment: '' }
    : { exercise: called.id, equipment: onlyThing(called.id, equipment) };
}

/** What can load an exercise in a gym. */
export function thingsFor(exercise: string, equipment: readonly Equipment[]): readonly Equipment[] {
  const found = findExercise(exercise);
  return found.kind === 'found' ? equipment.filter((one) => canLoad(found.exercise, one)) : [];
}

/**
 * Id of the piece of equipment that an exercise is done on: the one that is called like it, or the
 * only one that can load it; nothing where that leaves several.
 */
export function onlyThing(exercise: string, equipment: readonly Equipment[]): string {
  const things = thingsFor(exercise, equipment);
  const called = things.filter(({ id, name }) => [id, name].some(isCalled(exercise)));
  const [only, ...others] = called.length > 0 ? called : things;
  return only !== undefined && others.length === 0 ? only.id : '';
}

/** The sets with what their names stand for. Equipment that a set names itself is kept. */
export function namedSets(sets: readonly LoggedSet[], choices: NameChoices): readonly LoggedSet[] {
  return sets.map((set) => {
    const { exercise = '', equipment = '' } = choices[set.exercise] ?? {};
    return {
      ...set,
      ...(exercise !== '' && { exercise }),
      ...(equipment !== '' && set.equipment === undefined && { equipment }),
    };
  });
}

function isCalled(exercise: string): (name: string) => boolean {
  return (name) => plain(name) === plain(exercise);
}

function plain(text: string): string {
  return (
    text
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu)
      ?.join(' ') ?? ''
  );
}
