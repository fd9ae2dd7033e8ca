import { describe, expect, it } from 'vitest';
import { nearestLoad } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { enduranceCurves, generalCurve, repsAtShare, shareForReps } from '../strength/index.ts';
import { barWith } from './gym.testing.ts';
import { repsBeforeStep } from './repsBeforeStep.ts';
import { repsWithOtherLoad } from './repsWithOtherLoad.ts';

describe('repsBeforeStep', () => {
  it('reads the curve at the share of the next load, for little and for much endurance', () => {
    const { kappaLogSd } = generalCurve;
    const at = (kappa: number) => {
      const bent = { kappa, alpha: 0.5 };
      return repsAtShare((40 / 45) * shareForReps(5, bent), bent);
    };
    const spread = Math.exp(1.2815515655446 * kappaLogSd);
    const { reps } = repsBeforeStep(kg(40), kg(45), 5);
    expect(reps.likely).toBeCloseTo(at(generalCurve.kappa), 9);
    expect(reps.low).toBeCloseTo(at(generalCurve.kappa / spread), 9);
    expect(reps.high).toBeCloseTo(at(generalCurve.kappa * spread), 9);
    expect(reps.level).toBe(0.8);
  });

  it('foretells twenty repetitions and no more', () => {
    // reps = 1 + 38 (1 - s) / s: twenty at s = 2 / 3
    const curve = { ...generalCurve, kappa: 38, alpha: 1 };
    expect(repsBeforeStep(kg(40.1), kg(60), 1, curve)).toMatchObject({
      aim: 20,
      beyondCounting: false,
    });
    expect(repsBeforeStep(kg(39.9), kg(60), 1, curve).beyondCounting).toBe(true);
  });
});

describe('the smallest plate is 2.5 kg', () => {
  it('makes 60 of 62 kg', () => {
    const choice = nearestLoad(barWith(20, 15, 10, 5, 2.5).loads, kg(62));
    expect(choice.kind !== 'none' && toKg(choice.chosen.load)).toBe(60);
  });

  it('asks for 9 or 10 with 40 before 45 for five, on any pressing curve', () => {
    for (const curve of [undefined, enduranceCurves.press]) {
      const { aim } = repsBeforeStep(kg(40), kg(45), 5, curve);
      expect(aim).toBeGreaterThanOrEqual(9);
      expect(aim).toBeLessThanOrEqual(10);
    }
  });

  it('has no count for twice the load: 46 by a straight-line equation, 36 by the curve', () => {
    const { reps, beyondCounting } = repsBeforeStep(kg(2.5), kg(5), 8);
    expect(beyondCounting).toBe(true);
    // the straight-line equation w (1 + r / 30): (2 (1 + 8 / 30) - 1) · 30 = 46, inside the band
    expect(reps.low).toBeLessThan(46);
    expect(reps.high).toBeGreaterThan(46);
  });
});

describe('repsWithOtherLoad', () => {
  it('does not let 20 kg stand in for 30 kg for eight', () => {
    const { reps, standing, ways, tag } = repsWithOtherLoad(
      { load: kg(30), reps: 8 },
      kg(20),
      enduranceCurves.press,
    );
    expect(standing).toBe('too-light');
    // two published equations give 17 and 27
    expect(reps.likely).toBeGreaterThanOrEqual(17);
    expect(reps.likely).toBeLessThanOrEqual(27);
    expect(ways.length).toBeGreaterThanOrEqual(3);
    expect(tag).toBe('travel');
  });

  it('gives the usual repetitions with the usual load, and none with one that is too heavy', () => {
    const same = repsWithOtherLoad({ load: kg(30), reps: 8 }, kg(30));
    expect(same.reps.likely).toBeCloseTo(8, 9);
    expect(same.standing).toBe('stands-in');
    expect(repsWithOtherLoad({ load: kg(30), reps: 8 }, kg(60)).reps.likely).toBe(0);
  });
});

describe('repsWithOtherLoad on a curve solved by hand', () => {
  // reps = 1 + 40 (1 - s) / s, so 11 at a share of 0.8: 30 kg for 11 is 37.5 kg for one
  const curve = { ...generalCurve, kappa: 40, alpha: 1, kappaLogSd: 0.3 };
  const usual = { load: kg(30), reps: 11 };
  const other = (load: number) => repsWithOtherLoad(usual, kg(load), curve);

  it('gives a band over people, none for a load above the maximum', () => {
    // 25 kg are 2 / 3: 1 + 40 / 2; at kappa k the share of 11 is k / (k + 10)
    const spread = Math.exp(1.2815515655446 * 0.3);
    const at = (kappa: number) => {
      const share = ((25 / 30) * kappa) / (kappa + 10);
      return 1 + (kappa * (1 - share)) / share;
    };
    const { reps } = other(25);
    expect(reps.likely).toBeCloseTo(21, 9);
    expect(reps.low).toBeCloseTo(at(40 / spread), 9);
    expect(reps.high).toBeCloseTo(at(40 * spread), 9);
    expect(reps.level).toBe(0.8);
    expect(other(37.6).reps.likely).toBe(0);
    expect(other(80).reps.likely).toBe(0);
    expect(repsWithOtherLoad({ load: kg(30), reps: 1 }, kg(30), curve).reps.likely).toBe(1);
  });

  it('stands in from three quarters to five quarters of the count', () => {
    // 13.75 and 8.25 repetitions are shares of 40 / 52.75 and 40 / 47.25 of 37.5 kg
    // which are 28.436 and 31.746 kg
    expect(other(28.43).standing).toBe('too-light');
    expect(other(28.44).standing).toBe('stands-in');
    expect(other(31.74).standing).toBe('stands-in');
    expect(other(31.75).standing).toBe('too-heavy');
  });

  it('has ways to make it harder for a light load only', () => {
    expect(other(20).ways.map(({ id }) => id)).toEqual([
      'slower-lowering',
      'pause',
      'one-side',
      'near-failure',
    ]);
    expect(other(30).ways).toEqual([]);
    expect(other(36).ways).toEqual([]);
  });
});
