import { describe, expect, it } from 'vitest';
import { type Exercise, type ExerciseShares, exercises } from '../anatomy/index.ts';
import { exerciseWith } from './exercises.testing.ts';
import { samePurpose } from './samePurpose.ts';

const named = (id: string): Exercise => {
  const exercise = exercises.find((candidate) => candidate.id === id);
  if (!exercise) throw new Error(`no exercise ${id}`);
  return exercise;
};

describe('samePurpose', () => {
  it.each([
    ['barbell-bench-press', 'cable-fly', true],
    ['barbell-bench-press', 'pike-push-up', false],
    ['goblet-squat', 'romanian-deadlift', true],
    ['goblet-squat', 'crunch', false],
    ['lying-triceps-extension', 'close-dumbbell-press', true],
    ['cable-pulldown', 'machine-pullover', true],
    ['cable-pulldown', 'dumbbell-curl', false],
  ])('%s and %s: %s', (wanted, candidate, same) => {
    expect(samePurpose(named(wanted), named(candidate))).toBe(same);
  });

  it('goes by the prime mover with the largest share, wherever it stands', () => {
    const lats = exerciseWith('lats', { direct: { lats: 0.5 } });
    const biceps = exerciseWith('biceps', { direct: { biceps: 0.5 } });
    for (const direct of [
      { biceps: 0.2, lats: 0.5 },
      { lats: 0.5, biceps: 0.2 },
    ]) {
      expect(samePurpose(exerciseWith('pull', { direct }), lats)).toBe(true);
      expect(samePurpose(exerciseWith('pull', { direct }), biceps)).toBe(false);
    }
  });

  it('is no purpose without prime movers, and refuses a muscle that is none', () => {
    const none = exerciseWith('none', { direct: {} });
    expect(samePurpose(none, named('dip'))).toBe(false);
    expect(samePurpose(named('dip'), none)).toBe(false);
    const unknown = exerciseWith('unknown', { direct: { gills: 0.5 } as ExerciseShares });
    expect(() => samePurpose(unknown, named('dip'))).toThrow(/no muscle gills/);
  });
});
