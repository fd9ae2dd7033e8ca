import { describe, expect, it } from 'vitest';
import { testExercise } from './exercise.testing.ts';
import { muscleHours } from './muscleHours.ts';

const work = [{ exercise: testExercise({ vasti: 1 }, { glutes: 1 }), sets: 2 }];

describe('muscleHours', () => {
  it('gives each muscle its likely hours, up to the next quarter', () => {
    // 2 hard sets: exp(2.9 + 0.79 ln 2) = 31.43 h; a helper counts 1: exp(2.9) = 18.17 h
    expect(muscleHours(work)).toEqual({ vasti: 31.5, glutes: 18.25 });
    // trained: exp(2.79 + 0.79 ln 2) = 28.15 h and exp(2.79) = 16.28 h
    expect(muscleHours(work, { status: 'trained' })).toEqual({ vasti: 28.25, glutes: 16.5 });
  });

  it('plans by the time that is asked for', () => {
    const known = { shift: 0, shiftSd: 0 };
    // 31.43 * exp(∓1.2815516 * 0.44) = 17.88 and 55.24 h
    expect(muscleHours(work, { by: 'earliest', habit: known }).vasti).toBe(18);
    expect(muscleHours(work, { by: 'cautious', habit: known }).vasti).toBe(55.25);
  });

  it('is empty without work', () => {
    expect(muscleHours([])).toEqual({});
  });
});
