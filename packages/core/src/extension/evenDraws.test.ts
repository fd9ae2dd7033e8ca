import { expect, it } from 'vitest';
import { DRAWS, evenDraws } from './evenDraws.ts';

it('has exactly its share of points below every mark of every axis, whatever the seed', () => {
  for (const seed of [0, 1, -5, 123_456_789, 0.5]) {
    const points = evenDraws(9, seed);
    expect(points).toHaveLength(DRAWS);
    expect(points.every((point) => point.length === 9)).toBe(true);
    for (let axis = 0; axis < 9; axis++) {
      for (const mark of [0.1, 0.25, 0.5, 0.75, 0.9]) {
        const below = points.filter((point) => (point[axis] ?? 2) < mark).length;
        // One point in each 251st of the axis: the count is right to within one.
        expect(Math.abs(below - mark * DRAWS)).toBeLessThanOrEqual(1);
      }
    }
  }
});

it('fills every pair of axes: a quarter of the square holds a quarter of the points', () => {
  const points = evenDraws(9, 3);
  for (let a = 0; a < 9; a++) {
    for (let b = 0; b < a; b++) {
      const inQuarter = points.filter((p) => (p[a] ?? 2) < 0.5 && (p[b] ?? 2) < 0.5).length;
      // A quarter of 251 is 63; independent random points would have a spread of 7.
      expect(Math.abs(inQuarter - DRAWS / 4)).toBeLessThan(7);
    }
  }
});

it('differs by seed and repeats with it', () => {
  expect(evenDraws(2, 1)).toEqual(evenDraws(2, 1));
  expect(evenDraws(2, 1)).not.toEqual(evenDraws(2, 2));
});
