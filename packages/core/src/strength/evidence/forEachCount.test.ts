import { describe, expect, it } from 'vitest';
import { kg } from '../../load/index.ts';
import type { Plane } from '../grid/Axis.ts';
import type { SetConditions } from '../PerformedSet.ts';
import { forEachCount } from './forEachCount.ts';

const axis = (...values: readonly [number, number]) => ({
  from: Math.log(values[0]),
  step: Math.log(values[1] / values[0]),
  count: 2,
});
/** One-rep max of 100 or 200 kg, kappa of 40 or 80, alpha 0.5 throughout. */
const plane: Plane = { columns: axis(100, 200), rows: axis(40, 80) };

function counted(conditions: SetConditions, grain?: number) {
  const cells: { mean: number; spread: number }[] = [];
  forEachCount(
    conditions,
    plane,
    0.5,
    (cell, mean, spread) => {
      cells[cell] = { mean, spread };
    },
    grain,
  );
  return cells as [{ mean: number; spread: number }, ...{ mean: number; spread: number }[]];
}

describe('forEachCount', () => {
  it('gives each cell its count by the curve: the maxima side by side, a kappa a row', () => {
    const cells = counted({ load: kg(81), secondsPerRep: 3 });
    // 81 of 100 kg: 0.19 / 0.9 = 0.2111; of 200 kg: 0.595 / 0.6364 = 0.93496
    const bends = [0.19 / 0.9, 0.595 / Math.sqrt(0.405)];
    const means = [40, 80].flatMap((kappa) => bends.map((bend) => 1 + kappa * bend));
    expect(cells.map(({ mean }) => mean)).toEqual(
      means.map((mean) => expect.closeTo(mean, 9) as number),
    );
    // 9.4444: repeat error 0.5 + 0.045 * 9.4444, form 5 % of it
    expect(cells[0].spread).toBeCloseTo(Math.hypot(0.925, 0.472_222), 5);
  });

  it('doubts the form of the curve below 55 %', () => {
    const [{ mean, spread }] = counted({ load: kg(25), secondsPerRep: 3 });
    // 0.75 / 0.5 = 1.5; form 5 % and 0.6 * 0.3; repeat 0.5 + 0.045 * 61
    expect(mean).toBeCloseTo(61, 9);
    expect(spread).toBeCloseTo(Math.hypot(3.245, 61 * 0.23), 9);
  });

  it('has the repeat error of none for a load above the one-rep max', () => {
    const [{ mean, spread }] = counted({ load: kg(144), secondsPerRep: 3 });
    // 1 - 40 * 0.44 / 1.2
    expect(mean).toBeCloseTo(1 - 17.6 / 1.2, 9);
    expect(spread).toBeCloseTo(0.5, 12);
  });

  it('takes kappa at the pace, and adds the doubt of the pace', () => {
    const [{ mean, spread }] = counted({ load: kg(81), secondsPerRep: 6 });
    const kappa = 40 * 2 ** -0.55;
    expect(mean).toBeCloseTo(1 + (kappa * 0.19) / 0.9, 9);
    // the count falls by kappa * (0.81 / 0.9 + 0.5 * 0.2111) per ln load, in doubt by 3 %
    const byLoad = kappa * (0.9 + 0.095 / 0.9) * 0.03;
    const byKappa = (mean - 1) * 0.12 * Math.log(2);
    expect(spread).toBeCloseTo(Math.hypot(0.5 + 0.045 * mean, 0.05 * mean, byLoad, byKappa), 9);
  });

  it('takes the capacity that is left off the load, and adds its doubt', () => {
    const [{ mean, spread }] = counted({ load: kg(81), secondsPerRep: 3, capacity: 0.8 });
    // 0.8 - 0.81 over 0.9; a fifth of the missing 0.2 is in doubt
    expect(mean).toBeCloseTo(1 - 0.4 / 0.9, 9);
    expect(spread).toBeCloseTo(Math.hypot(0.5 + 0.045 * mean, 0.05 * mean, (40 / 0.9) * 0.04), 9);
  });

  it('adds the width of its cells when asked', () => {
    const [{ mean, spread }] = counted({ load: kg(81), secondsPerRep: 3 }, 0.02);
    const byLoad = 40 * (0.9 + 0.095 / 0.9) * 0.02;
    expect(spread).toBeCloseTo(Math.hypot(0.5 + 0.045 * mean, 0.05 * mean, byLoad), 9);
  });
});
