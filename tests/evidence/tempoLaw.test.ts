import { describe, expect, it } from 'vitest';
import {
  generalCurve,
  kappaAtTempo,
  shareForReps,
} from '../../packages/core/src/strength/index.ts';
import { readReference } from './readReference.ts';
import { repsAtPace } from './repsAtPace.ts';

describe('the pace law against published comparisons', () => {
  it('holds every verified exponent, and is itself inside their range', () => {
    const exponents = readReference('tempo-elasticity-derived').rows.map((row) => Number(row[5]));
    const law = -Math.log(kappaAtTempo(1, 6).kappa.likely) / Math.log(2);
    const [least, most] = [Math.min(...exponents), Math.max(...exponents)];
    expect(law).toBeGreaterThan(least);
    expect(law).toBeLessThan(most);
    const band = kappaAtTempo(1, 6).kappa;
    expect(-Math.log(band.high) / Math.log(2)).toBeCloseTo(least, 3);
    expect(-Math.log(band.low) / Math.log(2)).toBeCloseTo(most, 3);
  });

  it('lengthens every set that was seen to lengthen, and shortens none', () => {
    for (const [, , , ratio, , , seconds] of readReference('tempo-elasticity-derived').rows) {
      expect(Number(seconds)).toBeGreaterThan(1);
      const { likely } = repsAtPace(15, 2, 2 * Number(ratio));
      expect((likely * Number(ratio)) / 15).toBeGreaterThan(1);
    }
  });

  it('promises up to three times what was seen at 20 s a repetition, so it does not answer there', () => {
    const { rows } = readReference('hatfield-2006-very-slow');
    expect(kappaAtTempo(1, 20).kind).toBe('slower');
    for (const [lift, percent, , seconds, mean] of rows) {
      if (seconds !== 20) continue;
      const own = rows.find((row) => row[0] === lift && row[1] === percent && row[3] === null);
      const { low, likely, high } = repsAtPace(Number(own?.[4]), 3, 20);
      expect(likely).toBeGreaterThan(1.3 * Number(mean));
      expect(Number(mean)).toBeGreaterThanOrEqual(low);
      expect(Number(mean)).toBeLessThan(high);
    }
  });

  it('explains a third or less of the load taken off in sets without relaxation', () => {
    // Shown, not counted: unbroken tension is mixed into the pace. The same count, 8 repetitions, at
    // 55 to 60 % in 6 s without relaxation and at 80 to 90 % in 2 s with 1 s of it.
    const row = readReference('slow-protocol-loads').rows.find(([, , tempo]) =>
      /no relax/.test(String(tempo)),
    );
    const middle = (range: unknown) => {
      const [low, high] = String(range).split('-').map(Number);
      return ((low ?? 0) + (high ?? 0)) / 200;
    };
    const seen = middle(row?.[6]) - middle(row?.[3]);
    const asked = (seconds: number) =>
      shareForReps(8, {
        kappa: kappaAtTempo(generalCurve.kappa, seconds).kappa.likely,
        alpha: 0.5,
      });
    const explained = (asked(2) - asked(6)) / seen;
    expect(explained).toBeGreaterThan(0.2);
    expect(explained).toBeLessThan(0.4);
  });
});
