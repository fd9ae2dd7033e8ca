import { describe, expect, it } from 'vitest';
import { normalBelow, normalDensity } from '../../basis/index.ts';
import { kg } from '../../load/index.ts';
import { axisAround } from '../grid/axisAround.ts';
import { countChances } from './countChances.ts';
import { forEachCount } from './forEachCount.ts';

/** One-rep max about 100 kg, kappa about 38, both normal in the logarithm. */
const plane = {
  columns: axisAround({ mean: Math.log(100), sd: 0.06 }, 60),
  rows: axisAround({ mean: Math.log(38), sd: 0.3 }, 24),
};
const belief = (() => {
  const raw = Array.from({ length: 60 * 24 }, (_, cell) => {
    const u = ((cell % 60) - 29.5) / (60 / 9);
    const v = (Math.floor(cell / 60) - 11.5) / (24 / 9);
    return normalDensity(u) * normalDensity(v);
  });
  const sum = raw.reduce((total, one) => total + one, 0);
  return raw.map((one) => one / sum);
})();

describe('countChances', () => {
  for (const [load, capacity] of [
    [30, 1],
    [70, 1],
    [90, 1],
    [90, 0.8],
    [100, 1],
    [130, 0.7],
  ] as const) {
    it(`agrees with the sum over every cell by itself: ${load} kg, capacity ${capacity}`, () => {
      const set = { load: kg(load), secondsPerRep: 4, capacity };
      const together = countChances(set, plane, belief, 0.5);
      const apart = Array.from({ length: 301 }, () => 0);
      forEachCount(set, plane, 0.5, (cell, mean, spread) => {
        const weight = belief[cell] ?? 0;
        let below = 0;
        for (let reps = 0; reps < 300; reps += 1) {
          const upTo = normalBelow((reps + 0.5 - mean) / spread);
          apart[reps] = (apart[reps] ?? 0) + weight * (upTo - below);
          below = upTo;
        }
      });
      // half a point of probability is the promise; putting cells together takes a fifth of it
      let [sumTogether, sumApart] = [0, 0];
      for (let reps = 0; reps < 300; reps += 1) {
        sumTogether += together[reps] ?? 0;
        sumApart += apart[reps] ?? 0;
        expect(Math.abs(sumTogether - sumApart)).toBeLessThan(0.001);
      }
    });
  }

  it('has whatever lies beyond 300 in the last', () => {
    // 1 of 100 kg: 1 + 38 * 0.99 / 0.1 = 377
    const chances = countChances({ load: kg(1), secondsPerRep: 3 }, plane, belief, 0.5);
    expect(chances).toHaveLength(301);
    expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
    expect(chances[300]).toBeGreaterThan(0.5);
  });

  it('ends where hardly anything is left, and begins with none', () => {
    // a third above the one-rep max: nothing but none
    const [none, ...more] = countChances({ load: kg(150), secondsPerRep: 3 }, plane, belief, 0.5);
    expect(none).toBeGreaterThan(0.999);
    expect(more.length).toBeLessThan(20);
  });
});
