import { canLoad, type Exercise, findExercise } from '@windlass/core/anatomy';
import type { Equipment } from '@windlass/core/equipment';
import { firstLift } from './firstLift.ts';
import { getAt, isRecord, type Json, listAt, setAt, textAt } from './tree.ts';

const LIFTS = ['intent', 'lifts'];

/** The draft with one more lift at its end, done as the one before it. */
export function addLift(draft: Json, exercise: Exercise, gym: readonly Equipment[]): Json {
  const lifts = listAt(draft, LIFTS);
  const last = lifts.at(-1);
  const { variant: _, ...like } = asRecord(last ?? firstLift);
  const place = [...LIFTS, lifts.length];
  return chooseExercise(setAt(draft, place, like), lifts.length, exercise, gym);
}

/** The draft with another exercise in a lift, on equipment that can load it. */
export function chooseExercise(
  draft: Json,
  place: number,
  exercise: Exercise,
  gym: readonly Equipment[],
): Json {
  const path = [...LIFTS, place];
  const present = textAt(draft, [...path, 'equipment']);
  const equipment = equipmentFor(exercise, gym, present)?.id ?? present;
  const { variant: _, ...lift } = asRecord(getAt(draft, path));
  return setAt(draft, path, { ...lift, exercise: exercise.id, equipment });
}

/** The draft with a lift moved one place up or down. */
export function moveLift(draft: Json, place: number, by: 1 | -1): Json {
  const lifts = listAt(draft, LIFTS);
  const lift = lifts[place];
  const to = place + by;
  if (lift === undefined || to < 0 || to >= lifts.length) return draft;
  return setAt(draft, LIFTS, lifts.toSpliced(place, 1).toSpliced(to, 0, lift));
}

/**
 * The equipment of a gym for an exercise: the present one where it can load it, else the one whose
 * name and id share most words with the exercise and the stations it needs.
 */
export function equipmentFor(
  exercise: Exercise,
  gym: readonly Equipment[],
  present = '',
): Equipment | undefined {
  const able = gym.filter((item) => canLoad(exercise, item));
  const words = new Set([exercise.id, ...exercise.stations].flatMap((text) => text.split('-')));
  const shared = ({ id, name }: Equipment) =>
    new Set([...id.split('-'), ...name.toLowerCase().split(/\W+/)].filter((w) => words.has(w)))
      .size;
  return (
    able.find(({ id }) => id === present) ?? able.toSorted((a, b) => shared(b) - shared(a)).at(0)
  );
}

/** The exercise of a lift of the draft, where there is one of that name. */
export function exerciseAt(draft: Json, place: number): Exercise | undefined {
  const found = findExercise(textAt(draft, [...LIFTS, place, 'exercise']));
  return found.kind === 'found' ? found.exercise : undefined;
}

function asRecord(value: Json | undefined): { readonly [key: string]: Json } {
  return isRecord(value) ? value : {};
}
