import { describe, expect, it } from 'vitest';
import { capacityFor } from './capacityFor.ts';
import { depositReps } from './depositReps.ts';
import { freshCapacity } from './freshCapacity.ts';
import { repCost } from './repCost.ts';
import { repsOverSets } from './repsOverSets.ts';
import { repsUntil } from './repsUntil.ts';
import { restCapacity } from './restCapacity.ts';

describe('the capacity state, by hand', () => {
  it('takes a rep off the exercise at its price, whatever the shares', () => {
    const press = { chest: 1, triceps: 0.5, shoulder: 0.5 };
    const state = depositReps(freshCapacity(), press, 4, 0.025);
    expect(capacityFor(state, press)).toBeCloseTo(0.9, 12);
    // Weights 1/2, 1/4, 1/4: their squares sum to 3/8, so a muscle of weight w loses 0.1·w/(3/8).
    expect(capacityFor(state, { chest: 1 })).toBeCloseTo(1 - 0.1 * (4 / 3), 12);
    expect(capacityFor(state, { triceps: 1 })).toBeCloseTo(1 - 0.1 * (2 / 3), 12);
  });

  it('leaves other muscles and the given state untouched', () => {
    const before = { calves: { fast: 0.1, slow: 0.02 } };
    const after = depositReps(before, { biceps: 1 }, 3, 0.02);
    expect(before).toEqual({ calves: { fast: 0.1, slow: 0.02 } });
    expect(after.calves).toEqual({ fast: 0.1, slow: 0.02 });
  });

  it('brings the fast part back with rest and keeps the slow part', () => {
    const state = restCapacity({ lats: { fast: 0.2, slow: 0.05 } }, 60);
    // 60 s × 0.01365 /s = 0.819; e^−0.819 = 0.44087 from a table of exponentials.
    expect(state.lats?.fast).toBeCloseTo(0.2 * 0.440_87, 5);
    expect(state.lats?.slow).toBe(0.05);
  });

  it('gives the rep curve from fresh', () => {
    // r(0.75) = 1 + 34.5 · 0.25 / 0.75 = 12.5
    const cost = repCost({ intensity: 0.75, kappa: 34.5, alpha: 1 });
    expect(repsUntil(1, 0.75, cost)).toBeCloseTo(12.5, 12);
    // One rep is exactly 100 %.
    expect(repsUntil(1, 1, repCost({ intensity: 1, kappa: 34.5, alpha: 0.7 }))).toBe(1);
  });

  it('stops programmers, by name', () => {
    expect(() => capacityFor({}, {})).toThrow(/shares must name/);
    expect(() => capacityFor({}, { biceps: -1 })).toThrow(/shares.biceps/);
    expect(() => depositReps({}, { biceps: 1 }, -1, 0.02)).toThrow(/depositReps: reps/);
    expect(() => restCapacity({}, Number.NaN)).toThrow(/restSeconds/);
    expect(() => repCost({ intensity: 0, kappa: 30, alpha: 1 })).toThrow(/intensity/);
    expect(() => repsUntil(1, 0.8, 0)).toThrow(/costPerRep/);
  });
});

describe('three sets of knee extension at 80 % (Pereira 2007, means of 9 people)', () => {
  // Rev Bras Med Esporte 2007;13(5):287-291, doi 10.1590/S1517-86922007000500002, abstract.
  const rows = [
    { restSeconds: 60, observed: [10.8, 5.6, 4.8] },
    { restSeconds: 180, observed: [9.4, 7.0, 6.4] },
  ];
  // The first sets of the three conditions of the study (10.8, 9.4, 10.1) average 10.1 reps: that
  // fixes the price of a rep, 0.2 / (10.1 − 1). Only the later sets are predictions.
  const costPerRep = 0.2 / 9.1;

  it.each(rows)('is within 1.5 reps with $restSeconds s rest', ({ restSeconds, observed }) => {
    const { reps } = repsOverSets({
      intensity: 0.8,
      costPerRep,
      restsSeconds: [restSeconds, restSeconds],
      shares: { quadriceps: 1 },
    });
    // 1.5 reps: the between-person SD of these cells is 1.1 to 1.9 reps.
    observed.forEach((value, index) => {
      expect(Math.abs((reps[index] ?? Number.NaN) - value)).toBeLessThan(1.5);
    });
  });
});
