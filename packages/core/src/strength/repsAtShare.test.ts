import { describe, expect, it } from 'vitest';
import { generalCurve } from './generalCurve.ts';
import { repsAtShare } from './repsAtShare.ts';
import { shareForReps } from './shareForReps.ts';

describe('repsAtShare', () => {
  it('is exactly one repetition at the capacity that is left', () => {
    expect(repsAtShare(1)).toBe(1);
    expect(repsAtShare(0.7, generalCurve, 0.7)).toBe(1);
  });

  it('is none above it', () => {
    expect(repsAtShare(1.01)).toBe(0);
  });

  it('follows the formula worked by hand', () => {
    // 1 + 40 * 0.36 / 0.8
    expect(repsAtShare(0.64, { kappa: 40, alpha: 0.5 })).toBeCloseTo(19, 12);
    // 1 + 30 * 0.25 / 0.75
    expect(repsAtShare(0.75, { kappa: 30, alpha: 1 })).toBeCloseTo(11, 12);
  });

  it('refuses what no bar can be', () => {
    expect(() => repsAtShare(0)).toThrow(RangeError);
    expect(() => repsAtShare(Number.NaN)).toThrow(RangeError);
  });

  it('answers how many repetitions at 40 kg come before 45 kg for five', () => {
    const oneRepMax = 45 / shareForReps(5);
    // two published equations in common use give 9 and 10
    expect(repsAtShare(40 / oneRepMax)).toBeGreaterThan(9);
    expect(repsAtShare(40 / oneRepMax)).toBeLessThan(10);
  });
});
