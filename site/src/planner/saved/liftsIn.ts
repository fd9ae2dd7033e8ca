import { exercises } from '@windlass/core/anatomy';
import type { Equipment } from '@windlass/core/equipment';
import { readGym } from '@windlass/core/schema';
import { fileOf } from '../state/fileOf.ts';
import { addLift, equipmentFor } from '../state/liftEdits.ts';
import { getAt, type Json, listAt, setAt, textAt } from '../state/tree.ts';

const LIFTS = ['intent', 'lifts'];

/**
 * The draft with those of its lifts that are on equipment of its gym. Where none is, it gets the
 * first pull of the list that the gym can load, or else the first exercise, to be exchanged.
 */
export function liftsIn(draft: Json): Json {
  const gym = readGym(fileOf(getAt(draft, ['gym']) ?? null));
  if (!gym.ok) return draft;
  const ids = new Set(gym.value.equipment.map(({ id }) => id));
  const lifts = listAt(draft, LIFTS);
  const able = lifts.filter((lift) => ids.has(textAt(lift, ['equipment'])));
  if (able.length > 0) return able.length === lifts.length ? draft : setAt(draft, LIFTS, able);
  const first = firstExercise(gym.value.equipment);
  return first ? addLift(setAt(draft, LIFTS, []), first, gym.value.equipment) : draft;
}

function firstExercise(equipment: readonly Equipment[]) {
  const able = exercises.filter(
    (exercise) => !exercise.timed && equipmentFor(exercise, equipment) !== undefined,
  );
  return able.find(({ movement }) => movement === 'horizontal-row') ?? able[0];
}
