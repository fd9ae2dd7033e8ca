import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { capacityFor } from './capacityFor.ts';
import { depositSustained } from './depositSustained.ts';
import { sustainedFatigue } from './sustainedFatigue.ts';
import { sustainedSeconds } from './sustainedSeconds.ts';

const part = fc.double({ min: 0, max: 1, noNaN: true });
const load = fc.double({ min: 0.15, max: 1, noNaN: true });
const duration = fc.double({ min: 0, max: 300, noNaN: true });

const seconds = (targetLoad: number, fatigued: number) => {
  const result = sustainedSeconds({ targetLoad, fatigued });
  return result.kind === 'fails' ? result.seconds : Number.POSITIVE_INFINITY;
};

it('a heavier load or a more tired start never holds longer', () => {
  fc.assert(
    fc.property(load, load, part, part, (a, b, p, q) => {
      const [light, heavy] = a < b ? [a, b] : [b, a];
      const [rested, tired] = p < q ? [p, q] : [q, p];
      expect(seconds(heavy, tired)).toBeLessThanOrEqual(seconds(light, rested) * (1 + 1e-9));
    }),
  );
});

it('holding in two parts is holding once', () => {
  fc.assert(
    fc.property(load, part, duration, duration, (targetLoad, fatigued, first, second) => {
      const middle = sustainedFatigue({ targetLoad, fatigued }, first);
      const parts = sustainedFatigue({ targetLoad, fatigued: middle }, second);
      expect(parts).toBeCloseTo(sustainedFatigue({ targetLoad, fatigued }, first + second), 9);
    }),
  );
});

it('the state after a hold has the fatigue of the closed form, whatever the shares', () => {
  fc.assert(
    fc.property(load, duration, (targetLoad, held) => {
      const shares = { quadriceps: 0.6, glutes: 0.3, 'adductor-magnus': 0.1 };
      const state = depositSustained({}, shares, { targetLoad, seconds: held });
      const expected = 1 - sustainedFatigue({ targetLoad, fatigued: 0 }, held);
      expect(capacityFor(state, shares)).toBeCloseTo(expected, 9);
    }),
  );
});
