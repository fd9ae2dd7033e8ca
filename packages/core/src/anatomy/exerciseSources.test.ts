import { describe, expect, it } from 'vitest';
import { FREE_WEIGHT_ECCENTRIC, MACHINE_ECCENTRIC } from './eccentricFactors.ts';
import { exerciseSources } from './exerciseSources.ts';

describe('the sources of the exercise data', () => {
  it('are named once each, and say what is a convention', () => {
    const ids = exerciseSources.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
    const conventions = exerciseSources.filter(({ standing }) => standing === 'convention');
    expect(conventions[0]?.citation).toMatch(/^Shares/);
  });

  // Kelly 2015: 115.99 / 93.56; Shibata 2025: 141.3 / 113.8, 103.3 / 82.3, 19.3 / 14.6 kg.
  it('put the free-weight factor within the measured lifts, at their lower end', () => {
    const measured = [115.99 / 93.56, 141.3 / 113.8, 103.3 / 82.3, 19.3 / 14.6];
    expect(Math.min(...measured)).toBeLessThan(FREE_WEIGHT_ECCENTRIC);
    expect(Math.max(...measured)).toBeGreaterThan(FREE_WEIGHT_ECCENTRIC);
  });

  // Hollander 2007, men: pulldown, leg press, bench press, leg extension, military press, leg curl.
  it('put the machine factor near the mean of the measured machines', () => {
    const measured = [1.32, 1.44, 1.4, 1.35, 1.49, 1.27];
    const mean = measured.reduce((sum, ratio) => sum + ratio, 0) / measured.length;
    expect(mean).toBeCloseTo(MACHINE_ECCENTRIC, 1); // 1.38: one decimal is what six means carry
  });
});
