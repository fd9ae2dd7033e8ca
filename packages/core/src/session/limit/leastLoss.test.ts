import { describe, expect, it } from 'vitest';
import { type Exercise, findExercise } from '../../anatomy/index.ts';
import type { LiftPieces } from './LiftPieces.ts';
import { leastLoss } from './leastLoss.ts';

function named(id: string): Exercise {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`${id} has left the list of exercises`);
  return found.exercise;
}

/** Two minutes, a further set of three, 40 s past failure, two warm-up sets of 20 and 30 s. */
const first: LiftPieces = {
  lift: 0,
  exercise: named('cable-pulldown'),
  leanSeconds: 120,
  leanSets: 1,
  furtherSets: [180],
  chainSeconds: 40,
  lightSteps: [20, 30],
  stays: false,
};
const second: LiftPieces = { ...first, lift: 3, exercise: named('dumbbell-curl'), chainSeconds: 0 };
const kept = (seconds: number, ...pieces: readonly LiftPieces[]) => leastLoss(pieces, seconds);
const all = { lift: 0, sets: 2, skipSteps: 0, skipChain: false };

describe('leastLoss', () => {
  // 120 + 180 + 40 + 50 s are 390 s
  it.each([
    [390, all],
    // the lightest warm-up set goes first, then the other one
    [389, { ...all, skipSteps: 1 }],
    [370, { ...all, skipSteps: 1 }],
    [369, { ...all, skipSteps: 2 }],
    [340, { ...all, skipSteps: 2 }],
    // without what follows failure there is room for a warm-up set again
    [339, { ...all, skipSteps: 1, skipChain: true }],
    [329, { ...all, skipSteps: 2, skipChain: true }],
    [300, { ...all, skipSteps: 2, skipChain: true }],
    // a set less leaves room for all of the rest
    [299, { ...all, sets: 1 }],
    [159, { ...all, sets: 1, skipSteps: 1, skipChain: true }],
    [120, { ...all, sets: 1, skipSteps: 2, skipChain: true }],
  ])('keeps in %i seconds what is worth most', (seconds, expected) => {
    expect(kept(seconds, first)).toEqual([expected]);
  });

  it('keeps the lift that is worth more, by its place, and nothing where none fits', () => {
    expect(kept(239, first, second)?.map(({ lift }) => lift)).toEqual([0]);
    expect(kept(239, first, { ...second, stays: true })?.map(({ lift }) => lift)).toEqual([3]);
    expect(kept(240, first, second)?.map(({ lift }) => lift)).toEqual([0, 3]);
    expect(kept(119, first, second)).toBeUndefined();
    expect(kept(120, second)).toEqual([{ lift: 3, sets: 1, skipSteps: 2, skipChain: false }]);
  });
});
