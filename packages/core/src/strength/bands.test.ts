import { describe, expect, it } from 'vitest';
import { generalCurve } from './generalCurve.ts';
import { kappaBand } from './kappaBand.ts';
import { oneRepMaxKg } from './oneRepMaxKg.ts';
import { priorFor } from './priorFor.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';
import { strengthFrom } from './strengthFrom.ts';

const prior = priorFor(generalCurve, { kg: 80, doubt: 0.1 });
const belief = strengthFrom({ sets: [], prior, today: 0 }) as StrengthPosterior;

describe('bands of a belief', () => {
  it('hold their level of a normal logarithm', () => {
    // 95 % lie within 1.95996 SD: 80 * exp(-+0.195996), cells of 0.9 % spread evenly
    const max = oneRepMaxKg(belief, 0.95);
    expect(max.low / 65.76).toBeCloseTo(1, 2);
    expect(max.high / 97.32).toBeCloseTo(1, 2);
    expect(max.level).toBe(0.95);
    // kappa of the general curve with its spread, within 1.28155 SD
    const { low, likely, high, level } = kappaBand(belief);
    const reach = 1.281_55 * generalCurve.kappaLogSd;
    expect(likely / generalCurve.kappa).toBeCloseTo(1, 2);
    expect(Math.log(low / likely)).toBeCloseTo(-reach, 1);
    expect(Math.log(high / likely)).toBeCloseTo(reach, 1);
    expect(level).toBe(0.8);
  });

  it('take levels from 0.01 to 0.999', () => {
    for (const [name, band] of Object.entries({ oneRepMaxKg, kappaBand })) {
      for (const level of [0.01, 0.999]) expect(() => band(belief, level)).not.toThrow();
      for (const level of [0.009, 1]) {
        expect(() => band(belief, level)).toThrow(`${name}: level must be`);
      }
    }
  });
});

describe('priorFor', () => {
  it('takes the curve, and what is believed of the one-rep max', () => {
    const { kappa, kappaLogSd, alpha } = generalCurve;
    const lnKappa = { mean: Math.log(kappa), sd: kappaLogSd };
    expect(priorFor(generalCurve)).toEqual({ lnKappa, alpha });
    expect(prior).toEqual({ lnMax: { mean: Math.log(80), sd: 0.1 }, lnKappa, alpha });
  });

  it('refuses a one-rep max of 0 and a doubt outside 0.001 to 2', () => {
    const believe = (kg: number, doubt: number) => () => priorFor(generalCurve, { kg, doubt });
    for (const doubt of [0.001, 2]) expect(believe(80, doubt)).not.toThrow();
    for (const doubt of [0.0009, 2.1]) {
      expect(believe(80, doubt)).toThrow('priorFor: doubt must be');
    }
    expect(believe(0, 0.1)).toThrow('priorFor: kg must be');
  });
});
