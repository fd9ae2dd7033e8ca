import { describe, expect, it } from 'vitest';
import type { Exercise } from '../anatomy/index.ts';
import { enduranceCurves, kappaBand, oneRepMaxKg } from '../strength/index.ts';
import { beliefOf, done, named } from './beliefs.testing.ts';
import { carryOver } from './carryOver.ts';

describe('carryOver', () => {
  const belief = beliefOf([done(60, 8, 0), done(70, 4, 3)], 3);
  const [row, pulldown, press] = ['cable-row', 'cable-pulldown', 'leg-press'].map(named) as [
    Exercise,
    Exercise,
    Exercise,
  ];

  it('carries endurance between exercises of one kind, less surely, and no load', () => {
    const { prior, carried, sharedWork } = carryOver({
      from: row,
      to: pulldown,
      posterior: belief,
    });
    expect(carried).toEqual(['endurance']);
    expect(prior.lnMax).toBeUndefined();
    expect(sharedWork).toBeGreaterThan(0.3);
  });

  it('carries nothing to another kind', () => {
    const { prior, carried } = carryOver({ from: row, to: press, posterior: belief });
    expect(carried).toEqual([]);
    expect(prior.lnKappa.mean).toBeCloseTo(Math.log(enduranceCurves['leg-press'].kappa), 12);
  });

  it('carries strength by a ratio as the range that it is, wider than it was', () => {
    const { prior } = carryOver({
      from: row,
      to: pulldown,
      posterior: belief,
      ratio: { low: 1.05, high: 1.2 },
    });
    const max = oneRepMaxKg(belief);
    // the middle of the ratio on the log scale is the root of its ends
    expect(prior.lnMax?.mean).toBeCloseTo(Math.log(max.likely * Math.sqrt(1.05 * 1.2)), 9);
    expect(prior.lnMax?.sd).toBeGreaterThan(Math.log(max.high / max.low) / (2 * 1.2816));
  });

  it('is less sure of endurance by a fifth between exercises of one kind', () => {
    const { low, likely, high } = kappaBand(belief, 0.8);
    const own = Math.log(high / low) / (2 * 1.2815515655446);
    const { prior } = carryOver({ from: row, to: pulldown, posterior: belief });
    expect(prior.lnKappa.mean).toBeCloseTo(Math.log(likely), 9);
    expect(prior.lnKappa.sd).toBeCloseTo(Math.hypot(own, 0.2), 9);
    const other = carryOver({ from: row, to: press, posterior: belief }).prior;
    expect(other.lnKappa.sd).toBe(enduranceCurves['leg-press'].kappaLogSd);
    expect(other.alpha).toBe(0.5);
  });

  it('adds the doubt of the ratio to the doubt of the maximum', () => {
    const ratio = { low: 0.8, high: 1.25 };
    const { prior, carried } = carryOver({ from: row, to: press, posterior: belief, ratio });
    const { low, high } = oneRepMaxKg(belief);
    const [own, between] = [high / low, 1.25 / 0.8].map(
      (times) => Math.log(times) / (2 * 1.2815515655446),
    );
    expect(carried).toEqual(['strength']);
    expect(prior.lnMax?.sd).toBeCloseTo(Math.hypot(own ?? 0, between ?? 0), 9);
    const both = carryOver({ from: row, to: pulldown, posterior: belief, ratio }).carried;
    expect(both).toEqual(['endurance', 'strength']);
  });

  it('shares the work that both give to the same muscles', () => {
    expect(carryOver({ from: row, to: row, posterior: belief }).sharedWork).toBeCloseTo(1, 9);
    const extension = named('leg-extension');
    expect(carryOver({ from: row, to: extension, posterior: belief }).sharedWork).toBe(0);
    // vasti 0.7 and rectus femoris 0.3 of the leg extension; what the press gives them is less
    const { direct, indirect } = press;
    const shares = { ...direct, ...indirect };
    const total = Object.values(shares).reduce((sum, share) => sum + share, 0);
    const common =
      Math.min(0.7, (shares.vasti ?? 0) / total) +
      Math.min(0.3, (shares['rectus-femoris'] ?? 0) / total);
    const { sharedWork } = carryOver({ from: press, to: extension, posterior: belief });
    expect(sharedWork).toBeCloseTo(common, 9);
    expect(common).toBeGreaterThan(0);
  });

  it('refuses a ratio upside down', () => {
    const ratio = { low: 1.2, high: 1.05 };
    expect(() => carryOver({ from: row, to: pulldown, posterior: belief, ratio })).toThrow(
      RangeError,
    );
  });
});
