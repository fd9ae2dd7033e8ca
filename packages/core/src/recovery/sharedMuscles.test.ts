import { describe, expect, it } from 'vitest';
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
});
