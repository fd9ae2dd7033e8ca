import { describe, expect, it } from 'vitest';
import type { MuscleId } from '../anatomy/index.ts';
import { testExercise } from './exercise.testing.ts';
import { muscleDose } from './muscleDose.ts';
import { sharedMuscles } from './sharedMuscles.ts';

describe('sharedMuscles', () => {
  it('finds the pressing muscles that a chest day and a shoulder day share', () => {
    const chest = muscleDose([
      {
        exercise: testExercise({ chest: 0.5 }, { 'front-deltoid': 0.2, 'triceps-long-head': 0.3 }),
        sets: 4,
      },
    ]);
    const shoulders = muscleDose([
      {
        exercise: testExercise({ 'front-deltoid': 0.5 }, { 'triceps-long-head': 0.3 }),
        sets: 3,
      },
      { exercise: testExercise({ 'side-deltoid': 1 }), sets: 3 },
    ]);
    expect(sharedMuscles(chest, shoulders).map(({ muscle }) => muscle)).toEqual([
      'front-deltoid',
      'triceps-long-head',
    ]);
  });

  it('finds none between sessions for different muscles', () => {
    const legs = muscleDose([{ exercise: testExercise({ vasti: 1 }), sets: 3 }]);
    const back = muscleDose([{ exercise: testExercise({ lats: 1 }), sets: 3 }]);
    expect(sharedMuscles(legs, back)).toEqual([]);
  });

  it('orders by the lesser of both doses, and by name where those are the same', () => {
    const dose = (muscle: MuscleId, hardSets: number) => ({ muscle, countedSets: 1, hardSets });
    const first = [dose('vasti', 9), dose('lats', 2), dose('glutes', 4), dose('biceps', 2)];
    const second = [dose('vasti', 1), dose('lats', 5), dose('glutes', 3), dose('biceps', 2)];
    // 1, 2, 3 and 2
    const order = ['glutes', 'biceps', 'lats', 'vasti'];
    for (const [a, b] of [
      [first, second],
      [second, first],
      [first.toReversed(), second],
    ] as const) {
      expect(sharedMuscles(a, b).map(({ muscle }) => muscle)).toEqual(order);
    }
  });
});
