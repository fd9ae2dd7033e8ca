import { describe, expect, it } from 'vitest';
import { normalBelow } from '../basis/index.ts';
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

  it('refuses hours that are not elapsed, and repetitions below 0', () => {
    const refused = { hoursSince: 0, hoursExpected: 0, reps: -1, repsForecast: -1 };
    for (const [name, value] of Object.entries(refused)) {
      const reports = [{ ...report(48, 9), [name]: value }];
      expect(() => learnRecovery(reports)).toThrow(`learnRecovery: ${name} must be`);
    }
    expect(() => learnRecovery([{ ...report(1, 0), repsForecast: 0 }])).not.toThrow();
  });

  it('agrees with a fine sum of its definition over many reports', () => {
    const reports = [20, 30, 40, 50, 60, 72].flatMap((hours) =>
      [9, 9, 9, 5].map((reps) => report(hours + reps, reps)),
    );
    let [total, first, second] = [0, 0, 0];
    for (let shift = -3; shift <= 3; shift += 1e-3) {
      let weight = Math.exp(-((shift / 0.44) ** 2) / 2);
      for (const { hoursSince, reps } of reports) {
        const below = normalBelow((Math.log(hoursSince / 48) - shift) / 0.44);
        weight *= reps >= 8 ? below : 1 - below;
      }
      total += weight;
      first += weight * shift;
      second += weight * shift * shift;
    }
    const mean = first / total;
    const habit = learnRecovery(reports);
    expect(habit.shift).toBeCloseTo(mean, 6);
    expect(habit.shiftSd).toBeCloseTo(Math.sqrt(second / total - mean * mean), 6);
  });
});
