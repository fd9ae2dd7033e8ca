import { describe, expect, it } from 'vitest';
import { requireNumber } from './requireNumber.ts';

describe('requireNumber', () => {
  it('lets numbers pass from the least to the greatest, both included', () => {
    for (const value of [0, 0.5, 10]) {
      expect(() => requireNumber('where', 'name', value, 0, 10)).not.toThrow();
    }
    expect(() => requireNumber('where', 'name', -1e300)).not.toThrow();
  });

  it.each([
    [Number.NaN, undefined, undefined, 'where: name must be a finite number, got NaN'],
    [
      Number.POSITIVE_INFINITY,
      0,
      undefined,
      'where: name must be a finite number of at least 0, got Infinity',
    ],
    [-0.1, 0, undefined, 'where: name must be a finite number of at least 0, got -0.1'],
    [10.1, undefined, 10, 'where: name must be a finite number of at most 10, got 10.1'],
    [11, 0, 10, 'where: name must be a finite number from 0 to 10, got 11'],
    [-1, 0, 10, 'where: name must be a finite number from 0 to 10, got -1'],
  ])('stops %s between %s and %s, and says what would be right', (value, min, max, message) => {
    expect(() => requireNumber('where', 'name', value, min, max)).toThrow(new RangeError(message));
  });
});
