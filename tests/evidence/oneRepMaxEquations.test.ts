import { describe, expect, it } from 'vitest';
import { oneRepMaxEquations } from '../../packages/core/src/strength/index.ts';
import { readReference } from './readReference.ts';

/** Names in the reference and ids in the library. */
const ids: Readonly<Record<string, string>> = {
  Epley: 'epley',
  Brzycki: 'brzycki',
  Lander: 'lander',
  Lombardi: 'lombardi',
  Mayhew: 'mayhew',
  OConner: 'oconner',
  Wathen: 'wathen',
  Adams: 'adams',
  Brown: 'brown',
  Kemmler: 'kemmler',
  Reynolds_chest: 'reynolds-chest-curve',
  Reynolds_leg: 'reynolds-leg-curve',
};

const { columns, rows } = readReference('one-rm-equations-test-vectors');

describe('published one-rep-max equations, as a share of the one-rep max', () => {
  for (const [column, name] of columns.entries()) {
    if (column === 0) continue;
    it(`agree with arithmetic to the printed digit: ${name}`, () => {
      const equation = oneRepMaxEquations.find(({ id }) => id === ids[name]);
      expect(rows.length).toBe(11);
      for (const row of rows) {
        const percent = 10_000 / (equation?.oneRepMaxKg(100, Number(row[0])) ?? 0);
        // printed to a thousandth of a point
        expect(Math.abs(percent - Number(row[column]))).toBeLessThan(0.000_51);
      }
    });
  }
});
