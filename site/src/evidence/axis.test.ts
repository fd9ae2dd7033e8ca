import { describe, expect, it } from 'vitest';
import { axis } from './axis.ts';

describe('axis', () => {
  it('writes round numbers, a few of them', () => {
    expect(axis([3, 40], true, 0, 100).ticks).toEqual([5, 10, 20]);
    expect(axis([6, 4000], true, 0, 100).ticks).toEqual([10, 30, 100, 300, 1000, 3000]);
    expect(axis([0.12, 0.9], false, 0, 100).ticks).toEqual([0.2, 0.4, 0.6, 0.8]);
  });

  it('leaves room at both ends, and turns round with its ends', () => {
    const up = axis([10, 20], false, 0, 100);
    expect(up.at(10)).toBeGreaterThan(0);
    expect(up.at(20)).toBeLessThan(100);
    expect(axis([10, 20], false, 100, 0).at(10)).toBeCloseTo(100 - up.at(10), 9);
  });

  it('stands for one value alone', () => {
    expect(axis([2.2], false, 0, 100).at(2.2)).toBeGreaterThan(0);
  });
});
