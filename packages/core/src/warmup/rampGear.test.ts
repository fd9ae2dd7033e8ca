import { describe, expect, it } from 'vitest';
import type { PlateStock } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import type { RampQuestion } from './Ramp.ts';
import { type RampGear, rampGear } from './rampGear.ts';

const bar = {
  kind: 'barbell',
  id: 'bar',
  name: 'Bar',
  bar: { value: 20, unit: 'kg' },
} as const;

const plates = (...weights: readonly number[]): readonly PlateStock[] =>
  weights.map((value) => ({ weight: { value, unit: 'kg' }, pieces: 4 }));

function gearFor(work: number, stock: readonly PlateStock[], rest: Partial<RampQuestion> = {}) {
  const gear = rampGear({
    equipment: bar,
    use: { plates: stock },
    work: kg(work),
    workShare: 0.8,
    experience: 'trained',
    ...rest,
  });
  if (gear.kind !== 'gear') throw new Error(gear.reason);
  return gear;
}

const codes = ({ notes }: RampGear) => notes.map(({ code }) => code);

function heaviestStep(work: number, ...weights: readonly number[]): number {
  return Math.max(...gearFor(work, plates(...weights)).lighter.map(({ load }) => toKg(load)));
}

describe('rampGear', () => {
  it('leaves out steps that are all but the work load', () => {
    // 94 % of 82.5 kg is 77.55 kg: 80 kg is too near, 77.5 kg is not
    expect(heaviestStep(82.5, 20, 10, 5, 2.5, 1.25)).toBe(77.5);
    // 94 % of 50 kg are 47 kg: 10 + 2.5 + 1 a side, 49 being 1 more
    expect(heaviestStep(50, 10, 2.5, 1)).toBe(47);
  });

  it('takes such a step where there is no other', () => {
    // 20 kg is 95.2 % of 21 kg
    expect(heaviestStep(21, 0.5)).toBe(20);
  });

  it('has every loading of the work load, the one of fewest pieces first', () => {
    const { workWays } = gearFor(60, plates(20, 10));
    // 20 on each end, or 10 + 10
    expect(workWays.map(({ loading }) => loading.pieces)).toEqual([2, 4]);
  });

  it('says that a work load between two others, or below the bar, cannot be made', () => {
    for (const work of [61, 19.5, 10]) {
      const question = { equipment: bar, use: { plates: plates(10) }, work: kg(work) };
      const asked = { experience: 'trained', workShare: 0.8 } as const;
      for (const more of [{}, { aboveWork: { loadCanBeStopped: true } }]) {
        expect(rampGear({ ...question, ...asked, ...more })).toMatchObject({
          kind: 'none',
          reason: 'work-load-not-reachable',
        });
      }
    }
  });

  describe('where every step has to stand on full-size plates', () => {
    const from = (work: number, ...stock: readonly PlateStock[]) => {
      const gear = gearFor(work, stock, { fromFloor: true });
      const inKg = gear.lighter.map(({ load }) => toKg(load));
      return {
        inKg,
        pieces: gear.workWays.map(({ loading }) => loading.pieces),
        codes: codes(gear),
      };
    };

    it('takes only such loadings where the work and a step stand', () => {
      // 40 is 10 + 10 alone, and 60 is 20 or 10 + 10
      expect(from(100, ...plates(20, 10))).toMatchObject({ inKg: [60, 80], codes: [] });
    });

    it('raises the bar where nothing lighter stands', () => {
      expect(from(60, ...plates(20, 10))).toEqual({
        inKg: [20, 40],
        pieces: [2, 4],
        codes: ['warmup.raise-the-bar'],
      });
    });

    it('raises the bar where the work load does not stand', () => {
      // 15 + 15 is the only way to 80, though 60 stands on 20
      const stock = [...plates(15), { ...plates(20)[0], pieces: 2 } as PlateStock];
      expect(from(80, ...stock)).toEqual({
        inKg: [20, 50, 60],
        pieces: [4],
        codes: ['warmup.raise-the-bar'],
      });
    });
  });
});
