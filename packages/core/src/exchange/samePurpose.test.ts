import { describe, expect, it } from 'vitest';
import { type Exercise, exercises } from '../anatomy/index.ts';
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
});
