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

  it('takes every number at the limits of its range, and names what lies beyond', () => {
    const curve = { kappa: 40, alpha: 0.5 };
    const at = (share: number, part: Partial<typeof curve> = {}, capacity = 1) =>
      repsAtShare(share, { ...curve, ...part }, capacity);
    expect(at(2)).toBe(0);
    expect(at(0.5, { kappa: 0 })).toBe(1);
    expect(at(0.5, { alpha: 0.25 })).toBeGreaterThan(1);
    expect(at(0.5, { alpha: 2 })).toBeGreaterThan(1);
    for (const [name, ask] of [
      ['share', () => at(2.01)],
      ['kappa', () => at(0.5, { kappa: -1 })],
      ['alpha', () => at(0.5, { alpha: 0.24 })],
      ['alpha', () => at(0.5, { alpha: 2.01 })],
      ['capacity', () => at(0.5, {}, 0)],
      ['capacity', () => at(0.5, {}, 1.01)],
    ] as const) {
      expect(ask).toThrow(`repsAtShare: ${name} must be`);
    }
  });
});
