import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { generalCurve } from './generalCurve.ts';
import { oneRepMaxKg } from './oneRepMaxKg.ts';
import { priorFor } from './priorFor.ts';
import { strengthFrom } from './strengthFrom.ts';

describe('strengthFrom', () => {
  it('agrees with a plain integration of the same model over a single set', () => {
    const prior = priorFor(generalCurve, { kg: 55, doubt: 0.2 });
    const belief = strengthFrom({
      sets: [{ load: kg(40), reps: 9, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
      prior,
      today: 0,
    });
    if (belief.kind !== 'posterior') throw new Error(belief.kind);
    const exact = integrated(40, 9, {
      max: 55,
      doubt: 0.2,
      kappa: generalCurve.kappa,
      kappaDoubt: 0.45,
    });
    const { low, likely, high } = oneRepMaxKg(belief);
    // the sum has steps of 0.2 %, the grid spreads each of its cells of about 1 % evenly
    expect(low / exact.low).toBeCloseTo(1, 2);
    expect(likely / exact.likely).toBeCloseTo(1, 2);
    expect(high / exact.high).toBeCloseTo(1, 2);
  });
});

/**
 * The same model put down once more from its description: one set to failure at 3 seconds a
 * repetition, summed over a fine net, with the error of the day inside.
 */
function integrated(
  load: number,
  reps: number,
  prior: { max: number; doubt: number; kappa: number; kappaDoubt: number },
): { low: number; likely: number; high: number } {
  const erf = (x: number) => {
    // Maclaurin series, 60 terms: to rounding for |x| below 3, and 1 beyond
    if (Math.abs(x) > 3) return Math.sign(x);
    let term = x;
    let sum = x;
    for (let n = 1; n < 60; n += 1) {
      term *= (-x * x) / n;
      sum += term / (2 * n + 1);
    }
    return (2 / Math.sqrt(Math.PI)) * sum;
  };
  const below = (z: number) => 0.5 * (1 + erf(z / Math.SQRT2));
  const seen = (max: number, kappa: number) => {
    const share = load / max;
    const mean = 1 + (kappa * (1 - share)) / Math.sqrt(share);
    const count = Math.max(mean, 0);
    const form = 0.05 + 0.6 * Math.max(0, 0.55 - share);
    const spread = Math.hypot(0.5 + 0.045 * count, form * count);
    const near = (sd: number) => below((reps + 0.5 - mean) / sd) - below((reps - 0.5 - mean) / sd);
    return 0.95 * near(spread) + 0.045 * near(4 * spread) + 0.005 / 60;
  };
  const days = Array.from({ length: 17 }, (_, index) => (index - 8) / 2);
  const points: [number, number][] = [];
  for (let u = -5; u <= 5; u += 0.01) {
    const usual = prior.max * Math.exp(prior.doubt * u);
    let weight = 0;
    for (let v = -4; v <= 4; v += 0.4) {
      const kappa = prior.kappa * Math.exp(prior.kappaDoubt * v);
      for (const day of days) {
        const chance = seen(usual * Math.exp(0.025 * day), kappa);
        weight += chance * Math.exp(-0.5 * (v * v + day * day));
      }
    }
    points.push([usual, weight * Math.exp(-0.5 * u * u)]);
  }
  const total = points.reduce((sum, [, weight]) => sum + weight, 0);
  const at = (share: number) => {
    let sum = 0;
    for (const [max, weight] of points) {
      sum += weight;
      if (sum >= share * total) return max;
    }
    return Number.NaN;
  };
  return { low: at(0.1), likely: at(0.5), high: at(0.9) };
}
