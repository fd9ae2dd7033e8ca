import { describe, expect, it } from 'vitest';
import { generalCurve } from './generalCurve.ts';
import { shareForReps } from './shareForReps.ts';

describe('shareForReps', () => {
  it('is exactly the capacity for one repetition', () => {
    expect(shareForReps(1)).toBe(1);
    expect(shareForReps(1, generalCurve, 0.8)).toBe(0.8);
  });

  it('inverts by hand for alpha = 1: kappa / (kappa + reps - 1)', () => {
    expect(shareForReps(11, { kappa: 40, alpha: 1 })).toBeCloseTo(0.8, 14);
    expect(shareForReps(11, { kappa: 40, alpha: 1 }, 0.5)).toBeCloseTo(0.4, 14);
  });

  it('inverts by hand for alpha = 1/2: 1 + 40 * 0.36 / 0.8 is 19', () => {
    expect(shareForReps(19, { kappa: 40, alpha: 0.5 })).toBeCloseTo(0.64, 14);
  });

  it('halves to the same for alphas next to the two worked by hand', () => {
    for (const alpha of [0.5, 1]) {
      const near = shareForReps(12, { kappa: 35, alpha: alpha + 1e-9 });
      expect(near).toBeCloseTo(shareForReps(12, { kappa: 35, alpha }), 8);
    }
  });

  it('holds for counts that no one does', () => {
    // alpha = 1: 5 / (5 + 999); alpha = 2: x^2 = 5 (1 - x) / 999, its positive root
    expect(shareForReps(1000, { kappa: 5, alpha: 1 })).toBeCloseTo(5 / 1004, 14);
    const slope = 5 / 999;
    const root = (-slope + Math.sqrt(slope * slope + 4 * slope)) / 2;
    expect(shareForReps(1000, { kappa: 5, alpha: 2 })).toBeCloseTo(root, 12);
  });

  it('refuses less than one repetition', () => {
    expect(() => shareForReps(0.5)).toThrow(/reps must be a finite number from 1 to 1000/);
    expect(() => shareForReps(5, { kappa: 0, alpha: 1 })).toThrow(/kappa/);
  });

  it('takes every number at the limits of its range, and names what lies beyond', () => {
    const curve = { kappa: 40, alpha: 0.5 };
    const at = (reps: number, part: Partial<typeof curve> = {}, capacity = 1) =>
      shareForReps(reps, { ...curve, ...part }, capacity);
    expect(at(1000)).toBeGreaterThan(0);
    expect(at(5, { alpha: 0.25 })).toBeGreaterThan(0);
    expect(at(5, { alpha: 2 })).toBeGreaterThan(0);
    for (const [name, ask] of [
      ['reps', () => at(1001)],
      ['kappa', () => at(5, { kappa: 0 })],
      ['alpha', () => at(5, { alpha: 0.24 })],
      ['alpha', () => at(5, { alpha: 2.01 })],
      ['capacity', () => at(5, {}, 0)],
      ['capacity', () => at(5, {}, 1.01)],
    ] as const) {
      expect(ask).toThrow(`shareForReps: ${name} must be`);
    }
  });
});
