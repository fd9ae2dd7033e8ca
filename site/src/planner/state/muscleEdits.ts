import { findExercise, muscles } from '@windlass/core/anatomy';
import type { LiftIntent } from '@windlass/core/session';
import { firstLift } from './firstLift.ts';
import { getAt, isRecord, type Json, listAt, setAt, textAt } from './tree.ts';

const LIFTS = ['intent', 'lifts'];
const MUSCLES = ['intent', 'muscles'];

/** True where a draft names muscles, for which lifts are chosen. */
export const namesMuscles = (draft: Json): boolean => isRecord(getAt(draft, MUSCLES));

/** The draft with a first muscle that none of its lifts trains, done as its last lift is. */
export function addMuscles(draft: Json): Json {
  const trained = listAt(draft, LIFTS).flatMap((_, place) => {
    const found = findExercise(textAt(draft, [...LIFTS, place, 'exercise']));
    return found.kind === 'found' ? Object.keys(found.exercise.direct) : [];
  });
  const first = muscles.find(({ id }) => !trained.includes(id)) ?? muscles[0];
  return setAt(draft, MUSCLES, {
    muscles: [first?.id ?? ''],
    ...workOf(listAt(draft, LIFTS).at(-1)),
  });
}

/** The draft without muscles. */
export const removeMuscles = (draft: Json): Json => setAt(draft, MUSCLES, undefined);

/** The draft with the lifts that were chosen for its muscles as lifts of its own, to be changed one by one. */
export function keepChosen(draft: Json, chosen: readonly LiftIntent[]): Json {
  const work = workOf(getAt(draft, MUSCLES));
  const own = chosen.map(
    ({ exercise, variant, equipment }): Json => ({
      exercise,
      ...(variant !== undefined && { variant }),
      equipment,
      ...work,
    }),
  );
  return removeMuscles(setAt(draft, LIFTS, [...listAt(draft, LIFTS), ...own]));
}

/** How a lift, or what muscles ask for, is done. */
function workOf(like: Json | undefined) {
  const { window, tempo, sets, restSeconds } = { ...firstLift, ...(isRecord(like) ? like : {}) };
  return { window, tempo, sets, restSeconds };
}
