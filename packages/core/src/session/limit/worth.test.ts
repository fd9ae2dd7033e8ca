import { describe, expect, it } from 'vitest';
import { findExercise } from '../../anatomy/index.ts';
import { setValue } from '../setValue.ts';
import { worth } from './worth.ts';

function named(id: string) {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`${id} has left the list of exercises`);
  return found.exercise;
}

describe('setValue', () => {
  it.each([
    [0, 0],
    [0.5, 0.12],
    [1, 0.24],
    // half way from 1 to 2.5 sets and from 2.5 to 5
    [1.75, 0.29],
    [2.5, 0.34],
    [3.75, 0.39],
    [5, 0.44],
    [7, 0.44 + 2 * 0.023],
  ])('of %d sets is %d', (sets, value) => {
    expect(setValue(sets)).toBeCloseTo(value, 12);
  });
});

describe('worth', () => {
  const extension = {
    ...named('leg-extension'),
    direct: { vasti: 0.7 },
    indirect: { glutes: 0.3 },
  };

  it('counts a prime mover whole and a helper half, over all lifts', () => {
    expect(worth([])).toBe(0);
    // 0.24 for the one and 0.12 for the other
    expect(worth([{ exercise: extension, sets: 1 }])).toBeCloseTo(0.36, 12);
    const helped = { ...extension, indirect: { glutes: 0.2, hamstrings: 0.1 } };
    expect(worth([{ exercise: helped, sets: 1 }])).toBeCloseTo(0.24 + 2 * 0.12, 12);
    // two sets and one: 0.24 + 0.1 · 2 / 3, and 0.24
    const two = 0.24 + 0.1 / 1.5;
    expect(worth([{ exercise: extension, sets: 2 }])).toBeCloseTo(two + 0.24, 12);
    const twice = [
      { exercise: extension, sets: 1 },
      { exercise: extension, sets: 1 },
    ];
    expect(worth(twice)).toBeCloseTo(two + 0.24, 12);
    expect(worth([{ exercise: extension, sets: 0 }])).toBe(0);
  });
});
