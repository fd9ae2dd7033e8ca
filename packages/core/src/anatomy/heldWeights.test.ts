import { describe, expect, it } from 'vitest';
import { findExercise } from './findExercise.ts';
import { heldWeights } from './heldWeights.ts';

describe('heldWeights', () => {
  it.each([
    ['goblet-squat', 1], // both hands on one weight
    ['one-arm-dumbbell-row', 1], // the other hand leans on the bench
    ['concentration-curl', 1], // one hand
    ['dumbbell-curl', 2],
  ])('%s: %d', (id, weights) => {
    const found = findExercise(id);
    expect(found.kind === 'found' && heldWeights(found.exercise)).toBe(weights);
  });
});
