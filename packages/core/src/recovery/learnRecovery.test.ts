import { describe, expect, it } from 'vitest';
import { learnRecovery, type PerformanceReport } from './learnRecovery.ts';

const report = (hoursSince: number, reps: number): PerformanceReport => ({
  hoursSince,
  hoursExpected: 48,
  reps,
  repsForecast: 9,
});

describe('learnRecovery', () => {
  it('knows nothing of someone without reports', () => {
    expect(learnRecovery([])).toEqual({ shift: 0, shiftSd: 0.44 });
  });

  it('takes one repetition short as ready', () => {
    expect(learnRecovery([report(24, 8)]).shift).toBeLessThan(0);
    expect(learnRecovery([report(24, 7)]).shift).toBeGreaterThan(0);
  });

  it('agrees with the closed form for one report at the expected hours', () => {
    // normal prior times probit: mean of the shift is -sd² φ(0) / (0.5 √(sd² + noise²)) when ready
    const mean = (0.44 ** 2 * 0.3989422804) / (0.5 * Math.hypot(0.44, 0.44));
    // the grid stops at 4 standard deviations, which costs less than 1e-3
    expect(learnRecovery([report(48, 9)]).shift).toBeCloseTo(-mean, 3);
    expect(learnRecovery([report(48, 3)]).shift).toBeCloseTo(mean, 3);
  });

  it('grows surer with reports that agree', () => {
    const slow = Array.from({ length: 6 }, () => report(72, 5));
    const habit = learnRecovery(slow);
    expect(habit.shiftSd).toBeLessThan(learnRecovery(slow.slice(0, 1)).shiftSd);
    expect(habit.shift).toBeGreaterThan(learnRecovery(slow.slice(0, 1)).shift);
  });

  it('refuses hours that are not elapsed', () => {
    expect(() => learnRecovery([report(0, 9)])).toThrow(RangeError);
  });
});
