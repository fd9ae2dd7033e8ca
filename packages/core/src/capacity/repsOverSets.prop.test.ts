import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { capacityFor } from './capacityFor.ts';
import { depositReps } from './depositReps.ts';
import { repCost } from './repCost.ts';
import { repsOverSets } from './repsOverSets.ts';
import { repsUntil } from './repsUntil.ts';
import { restCapacity } from './restCapacity.ts';

const share = fc.double({ min: 0.05, max: 1, noNaN: true });
const shares = fc.record({ lats: share, biceps: share, forearms: share });
const fatigue = fc.record({
  fast: fc.double({ min: 0, max: 0.4, noNaN: true }),
  slow: fc.double({ min: 0, max: 0.2, noNaN: true }),
});
const state = fc.record({ lats: fatigue, biceps: fatigue, forearms: fatigue });
const kappa = fc.double({ min: 10, max: 100, noNaN: true });
const alpha = fc.double({ min: 0.5, max: 1, noNaN: true });
const intensity = fc.double({ min: 0.3, max: 1, noNaN: true });
const seconds = fc.double({ min: 0, max: 600, noNaN: true });
const slack = 1e-9; // double rounding over a dozen sums of numbers near 1

describe('laws of the capacity state', () => {
  it('a rep takes its price from the exercise, for any shares and state', () => {
    fc.assert(
      fc.property(state, shares, fc.nat(20), (start, asked, reps) => {
        const after = depositReps(start, asked, reps, 0.02);
        expect(capacityFor(start, asked) - capacityFor(after, asked)).toBeCloseTo(reps * 0.02, 9);
      }),
    );
  });

  it('resting in two parts is resting once, and never lowers capacity', () => {
    fc.assert(
      fc.property(state, shares, seconds, seconds, (start, asked, first, second) => {
        const parts = capacityFor(restCapacity(restCapacity(start, first), second), asked);
        expect(parts).toBeCloseTo(capacityFor(restCapacity(start, first + second), asked), 9);
        expect(parts).toBeGreaterThanOrEqual(capacityFor(start, asked) - slack);
      }),
    );
  });

  it('a heavier load never gives more reps', () => {
    fc.assert(
      fc.property(
        kappa,
        alpha,
        intensity,
        intensity,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (k, a, x, y, c) => {
          const [light, heavy] = x < y ? [x, y] : [y, x];
          const reps = (load: number) =>
            repsUntil(c, load, repCost({ intensity: load, kappa: k, alpha: a }));
          fc.pre(reps(heavy) > 0);
          expect(reps(heavy)).toBeLessThanOrEqual(reps(light) + slack);
        },
      ),
    );
  });

  const sets = fc.record({
    kappa,
    alpha,
    intensity,
    shares,
    restSeconds: seconds,
    count: fc.integer({ min: 2, max: 8 }),
  });
  const run = (s: {
    kappa: number;
    alpha: number;
    intensity: number;
    shares: Record<string, number>;
    restSeconds: number;
    count: number;
  }) =>
    repsOverSets({
      intensity: s.intensity,
      costPerRep: repCost(s),
      restsSeconds: Array.from({ length: s.count - 1 }, () => s.restSeconds),
      shares: s.shares,
    }).reps;

  it('with one load and equal rests, no set has more reps than the one before', () => {
    fc.assert(
      fc.property(sets, (input) => {
        run(input).reduce((before, now) => {
          expect(now).toBeLessThanOrEqual(before + slack);
          return now;
        });
      }),
    );
  });

  it('longer rests never give fewer reps in all', () => {
    fc.assert(
      fc.property(sets, seconds, (input, extra) => {
        const total = (reps: readonly number[]) => reps.reduce((sum, r) => sum + r, 0);
        const longer = run({ ...input, restSeconds: input.restSeconds + extra });
        expect(total(longer)).toBeGreaterThanOrEqual(total(run(input)) - slack);
      }),
    );
  });

  it('a heavier load gives no more reps in any set', () => {
    fc.assert(
      fc.property(sets, intensity, (input, other) => {
        const [light, heavy] = [input.intensity, other].sort((p, q) => p - q) as [number, number];
        const more = run({ ...input, intensity: light });
        run({ ...input, intensity: heavy }).forEach((reps, index) => {
          expect(reps).toBeLessThanOrEqual((more[index] ?? 0) + slack);
        });
      }),
    );
  });
});
