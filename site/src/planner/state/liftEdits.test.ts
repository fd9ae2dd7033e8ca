import { type Exercise, findExercise } from '@windlass/core/anatomy';
import { readGym } from '@windlass/core/schema';
import { describe, expect, it } from 'vitest';
import gymFile from '../../../../examples/boathouse/gym.json';
import { examples } from './examples.ts';
import { addLift, chooseExercise, equipmentFor, moveLift } from './liftEdits.ts';
import { readDraft } from './readDraft.ts';
import { getAt, type Json, listAt, textAt } from './tree.ts';

const draft: Json = examples['pull-day'];
const read = readGym(gymFile);
const gym = read.ok ? read.value.equipment : [];
const names = (tree: Json) =>
  listAt(tree, ['intent', 'lifts']).map((lift) => textAt(lift, ['exercise']));

function exercise(id: string): Exercise {
  const found = findExercise(id);
  if (found.kind === 'unknown') throw new RangeError(id);
  return found.exercise;
}

describe('equipmentFor', () => {
  it.each([
    ['leg-extension', 'leg-extension'],
    ['leg-press', 'leg-press'],
    ['barbell-back-squat', 'long-bar'],
    ['dumbbell-curl', 'dumbbells'],
    ['chin-up', 'station'],
  ])('finds for %s the %s', (id, equipment) => {
    expect(equipmentFor(exercise(id), gym)?.id).toBe(equipment);
  });

  it('keeps the present equipment where it can load the exercise', () => {
    expect(equipmentFor(exercise('barbell-curl'), gym, 'short-bar')?.id).toBe('short-bar');
    expect(equipmentFor(exercise('barbell-curl'), gym, 'station')?.id).toBe('long-bar');
  });

  it('finds nothing where nothing can load it', () => {
    expect(equipmentFor(exercise('band-row'), gym)).toBeUndefined();
  });
});

describe('addLift', () => {
  it('does the new lift as the one before it, in its usual set-up', () => {
    const next = addLift(draft, exercise('chin-up'), gym);
    expect(getAt(next, ['intent', 'lifts', 3])).toEqual({
      exercise: 'chin-up',
      equipment: 'station',
      window: { minReps: 9, maxReps: 12 },
      tempo: '3-0-2-1',
      sets: 1,
      restSeconds: 120,
    });
    expect(readDraft(next).ok).toBe(true);
  });
});

describe('chooseExercise', () => {
  it('drops the set-up of the exercise before, and takes equipment that fits', () => {
    const next = chooseExercise(draft, 0, exercise('leg-press'), gym);
    expect(getAt(next, ['intent', 'lifts', 0])).not.toHaveProperty('variant');
    expect(textAt(next, ['intent', 'lifts', 0, 'equipment'])).toBe('leg-press');
    expect(readDraft(next).ok).toBe(true);
  });
});

describe('moveLift', () => {
  it('swaps a lift with its neighbour, and back', () => {
    const moved = moveLift(draft, 0, 1);
    expect(names(moved)).toEqual([
      'cable-pulldown',
      'barbell-bent-over-row',
      'one-arm-dumbbell-row',
    ]);
    expect(moveLift(moved, 1, -1)).toEqual(draft);
  });

  it('does nothing beyond the ends', () => {
    expect(moveLift(draft, 0, -1)).toBe(draft);
    expect(moveLift(draft, 2, 1)).toBe(draft);
  });
});
