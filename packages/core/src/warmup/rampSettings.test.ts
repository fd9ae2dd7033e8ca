import { describe, expect, it } from 'vitest';
import { kg, LARGEST_LOAD, type Load } from '../load/index.ts';
import { generalCurve } from '../strength/index.ts';
import type { RampQuestion } from './Ramp.ts';
import { rampSettings } from './rampSettings.ts';

const question: RampQuestion = {
  equipment: { kind: 'band', id: 'band', name: 'Band' },
  work: kg(60),
  workShare: 0.8,
  experience: 'trained',
};

describe('rampSettings', () => {
  it('fills in what was left out', () => {
    expect(rampSettings(question)).toEqual({
      work: kg(60),
      workShare: 0.8,
      secondsPerRep: 2,
      secondsPerPiece: 4,
      // 2.5 % of the work load are 25 thousandths, squared
      pieceCost: 625,
      leastCapacity: 0.97,
      alreadyWarm: 0,
      state: { muscles: { lift: 1 }, start: {}, curve: generalCurve },
    });
  });

  it('takes what was given', () => {
    const curve = { kappa: 40, alpha: 0.5, kappaLogSd: 0.2, sources: [] };
    const start = { chest: { fast: 0.1, slow: 0.2 } };
    const own = rampSettings({
      ...question,
      ...{ secondsPerRep: 4, secondsPerPiece: 0, percentOffPerPiece: 1, leastCapacity: 0.9 },
      ...{ alreadyWarm: 0.5, muscles: { chest: 1 }, start, curve },
    });
    expect(own).toMatchObject({ secondsPerRep: 4, secondsPerPiece: 0, pieceCost: 100 });
    expect(own).toMatchObject({ leastCapacity: 0.9, alreadyWarm: 0.5 });
    expect(own.state).toEqual({ muscles: { chest: 1 }, start, curve });
  });

  it.each<[keyof RampQuestion, number, number]>([
    ['work', 1, LARGEST_LOAD],
    ['workShare', 0.2, 1],
    ['secondsPerRep', 1, 10],
    ['secondsPerPiece', 0, 60],
    ['alreadyWarm', 0, 1],
    ['percentOffPerPiece', 0, 10],
    ['leastCapacity', 0.5, 0.99],
  ])('takes %s from %d to %d and nothing beyond', (name, least, most) => {
    const settings = (value: number) => rampSettings({ ...question, [name]: value as Load });
    expect(() => settings(least)).not.toThrow();
    expect(() => settings(most)).not.toThrow();
    const named = new RegExp(`planRamp: ${name}`);
    for (const wrong of [least - 0.001, most * 1.001, Number.NaN]) {
      expect(() => settings(wrong)).toThrow(named);
    }
  });
});
