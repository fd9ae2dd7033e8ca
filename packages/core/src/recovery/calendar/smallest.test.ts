import { describe, expect, it } from 'vitest';
import { smallest } from './smallest.ts';

describe('smallest', () => {
  it('finds every place of the change, from 1 to the limit', () => {
    for (let change = 1; change <= 9; change += 1) {
      expect(smallest(9, (candidate) => candidate >= change)).toBe(change);
    }
  });

  it('finds none beyond the limit, and asks about nothing below 1', () => {
    expect(smallest(9, (candidate) => candidate >= 10)).toBeUndefined();
    expect(smallest(0, () => true)).toBeUndefined();
    expect(smallest(1, () => true)).toBe(1);
  });
});
