import { canLoad, type Exercise, exercises, muscles } from '@windlass/core/anatomy';
import type { Equipment } from '@windlass/core/equipment';
import { words } from '../asks/words.ts';

/** Exercises of one movement. */
export interface MovementGroup {
  readonly movement: Exercise['movement'];
  readonly exercises: readonly Exercise[];
}

/** The list to choose from: what the gym can load before what it cannot, each by movement. */
export interface ExerciseList {
  readonly loadable: readonly MovementGroup[];
  readonly others: readonly MovementGroup[];
  readonly count: number;
}

/**
 * The exercises that a search finds: every word of it begins a word of the name, the movement or a
 * muscle that it trains directly. Held and carried exercises have no rep window and are left out.
 */
export function exerciseList(search: string, gym: readonly Equipment[]): ExerciseList {
  const wanted = wordsOf(search);
  const found = exercises.filter((exercise) => {
    if (exercise.timed) return false;
    const own = wordsOf(described(exercise));
    return wanted.every((word) => own.some((other) => other.startsWith(word)));
  });
  const isLoadable = (exercise: Exercise) =>
    gym.some((item) => item.kind !== 'band' && canLoad(exercise, item));
  return {
    loadable: byMovement(found.filter(isLoadable)),
    others: byMovement(found.filter((exercise) => !isLoadable(exercise))),
    count: found.length,
  };
}

function described({ name, movement, direct }: Exercise): string {
  const own = muscles.filter(({ id }) => direct[id] !== undefined);
  const names = own.flatMap((muscle) => [
    muscle.name,
    muscle.anatomy,
    muscle.group,
    words.alsoCalled[muscle.id] ?? '',
  ]);
  return [name, words.movements[movement], ...names].join(' ');
}

function byMovement(list: readonly Exercise[]): readonly MovementGroup[] {
  return [...Map.groupBy(list, ({ movement }) => movement)].map(([movement, group]) => ({
    movement,
    exercises: group,
  }));
}

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
