import { describe, expect, it } from 'vitest';
import { simulations } from './calibration.ts';
import { committedReport } from './committed.ts';
import { intervalCoverage } from './intervalCoverage.ts';

describe('80 % intervals over simulated lifters', () => {
  it('hold 76 to 84 % of the time: one-rep max, that of today, and the next count', () => {
    const { seed, trials } = simulations.coverage;
    const result = intervalCoverage(seed, trials);
    console.table(result);
    // four points are three standard errors of a share of 80 % over 900 trials
    for (const share of [result.usual, result.today, result.reps]) {
      expect(share).toBeGreaterThanOrEqual(0.76);
      expect(share).toBeLessThanOrEqual(0.84);
    }
    // and say something: after one to six sessions the interval is about 15 % wide
    expect(result.width).toBeLessThan(0.25);
    // as the evidence report shows it
    expect(committedReport().calibration.coverage.usual).toBeCloseTo(result.usual, 3);
    expect(committedReport().calibration.coverage.reps).toBeCloseTo(result.reps, 3);
  }, 120_000);
});
