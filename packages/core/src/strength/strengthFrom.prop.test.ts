import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { generalCurve } from './generalCurve.ts';
import { oneRepMaxKg } from './oneRepMaxKg.ts';
import type { SetEnd } from './PerformedSet.ts';
import { priorFor } from './priorFor.ts';
import { strengthFrom } from './strengthFrom.ts';

const prior = {
  max: 55,
  doubt: 0.2,
  kappa: generalCurve.kappa,
  kappaDoubt: generalCurve.kappaLogSd,
};

describe('strengthFrom', () => {
  for (const [reps, end] of [
    [9, { kind: 'failure' }],
    [8, { kind: 'reserve', repsLeft: 2 }],
    [8, { kind: 'more', atLeast: 1 }],
    [0, { kind: 'failure' }],
  ] as const) {
    it(`agrees with a plain integration of the same model over ${reps} repetitions, ${end.kind}`, () => {
      const belief = strengthFrom({
        sets: [{ load: kg(40), reps, end, day: 0, secondsPerRep: 3 }],
        prior: priorFor(generalCurve, { kg: prior.max, doubt: prior.doubt }),
        today: 0,
      });
      if (belief.kind !== 'posterior') throw new Error(belief.kind);
      const exact = integrated(40, reps, end, prior);
      for (const when of ['usual', 'today'] as const) {
        const band = oneRepMaxKg(belief, 0.8, when);
        // the sum has steps of 0.4 %, the grid spreads each of its cells of about 1 % evenly
        for (const side of ['low', 'likely', 'high'] as const) {
          expect(band[side] / exact[when][side], `${when} ${side}`).toBeCloseTo(1, 2);
        }
      }
    });
  }
});

/**
 * The same model put down once more from its description: one set at 3 seconds a repetition,
 * summed over a fine net, with the error of the day inside.
 */
function integrated(
  load: number,
  reps: number,
  end: SetEnd,
  prior: { max: number; doubt: number; kappa: number; kappaDoubt: number },
) {
  const erf = (x: number) => {
    // Maclaurin series to rounding, 60 terms at most: for |x| below 3, and 1 beyond
    if (Math.abs(x) > 3) return Math.sign(x);
    let term = x;
    let sum = x;
    for (let n = 1; n < 60 && Math.abs(term) > 1e-15; n += 1) {
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
    const chance = (sd: number) => {
      if (end.kind === 'more') return below((mean - (reps + end.atLeast - 0.5)) / sd);
      if (end.kind === 'failure') {
        const upTo = below((reps + 0.5 - mean) / sd);
        return reps === 0 ? upTo : upTo - below((reps - 0.5 - mean) / sd);
      }
      const both = Math.hypot(sd, 0.7 + 0.25 * end.repsLeft);
      const off = (reps + end.repsLeft + 0.95 - mean) / both;
      return Math.exp(-0.5 * off * off) / (both * Math.sqrt(2 * Math.PI));
    };
    const anything = end.kind === 'more' ? 0.5 : 1 / 60;
    return 0.95 * chance(spread) + 0.045 * chance(4 * spread) + 0.005 * anything;
  };
  const days = Array.from({ length: 17 }, (_, index) => (index - 8) / 2);
  const usual: [number, number][] = [];
  const today: [number, number][] = [];
  for (let u = -5; u <= 5; u += 0.02) {
    const max = prior.max * Math.exp(prior.doubt * u);
    let sum = 0;
    for (const day of days) {
      let weight = 0;
      for (let v = -4; v <= 4; v += 0.4) {
        // a change of strength moves counts alike at every kappa, within a factor of e
        const form = 0.025 * day * Math.exp(Math.max(-1, Math.min(1, -prior.kappaDoubt * v)));
        const kappa = prior.kappa * Math.exp(prior.kappaDoubt * v);
        const chance = seen(max * Math.exp(form), kappa);
        const part = chance * Math.exp(-0.5 * (v * v + day * day + u * u));
        weight += part;
        today.push([max * Math.exp(form), part]);
      }
      sum += weight;
    }
    usual.push([max, sum]);
  }
  return { usual: quantiles(usual), today: quantiles(today) };
}

function quantiles(points: [number, number][]) {
  points.sort(([a], [b]) => a - b);
  const total = points.reduce((sum, [, weight]) => sum + weight, 0);
  const at = (share: number) => {
    let sum = 0;
    for (const [value, weight] of points) {
      sum += weight;
      if (sum >= share * total) return value;
    }
    return Number.NaN;
  };
  return { low: at(0.1), likely: at(0.5), high: at(0.9) };
}
