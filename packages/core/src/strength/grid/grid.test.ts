import { describe, expect, it } from 'vitest';
import type { LogDensity, Plane } from './Axis.ts';
import { axisAround } from './axisAround.ts';
import { blur } from './blur.ts';
import { momentsOf } from './momentsOf.ts';
import { marginOf, quantileAlong } from './quantileAlong.ts';
import { resample } from './resample.ts';
import { weightsOf } from './weightsOf.ts';

/** A slanting normal density: mean (1, 2), SD 0.2 and 0.5, correlation 0.8. */
function slanting(plane: Plane): LogDensity {
  const logs = new Float64Array(plane.columns.count * plane.rows.count);
  for (let cell = 0; cell < logs.length; cell += 1) {
    const column = cell % plane.columns.count;
    const u = (plane.columns.from + plane.columns.step * column - 1) / 0.2;
    const row = Math.floor(cell / plane.columns.count);
    const v = (plane.rows.from + plane.rows.step * row - 2) / 0.5;
    logs[cell] = -(u * u - 1.6 * u * v + v * v) / (2 * (1 - 0.64));
  }
  return { ...plane, logs };
}

const plane: Plane = {
  columns: axisAround({ mean: 1, sd: 0.2 }, 60),
  rows: axisAround({ mean: 2, sd: 0.5 }, 40),
};

describe('a density on a plane', () => {
  it('has the moments it was made with', () => {
    const { columns, rows } = momentsOf(slanting(plane));
    expect(columns.mean).toBeCloseTo(1, 4);
    expect(columns.sd).toBeCloseTo(0.2, 4);
    expect(rows.mean).toBeCloseTo(2, 4);
    expect(rows.sd).toBeCloseTo(0.5, 3);
  });

  it('is read off another plane exactly, being normal', () => {
    const other: Plane = {
      columns: axisAround({ mean: 1.03, sd: 0.15 }, 47),
      rows: axisAround({ mean: 1.9, sd: 0.4 }, 33),
    };
    const read = resample(slanting(plane), other).logs;
    slanting(other).logs.forEach((log, cell) => {
      expect(read[cell]).toBeCloseTo(log, 8);
    });
  });

  it('swings above neither side of a cliff', () => {
    const cliff = Float64Array.from({ length: 160 }, (_, cell) => (cell % 16 < 8 ? 0 : -690));
    const coarse = { from: 0, step: 1, count: 16 };
    const density: LogDensity = {
      columns: coarse,
      rows: { from: 0, step: 1, count: 10 },
      logs: cliff,
    };
    const fine = resample(density, {
      columns: { from: 0.1, step: 0.2, count: 70 },
      rows: density.rows,
    });
    expect(Math.max(...fine.logs)).toBeLessThanOrEqual(1e-9);
  });

  it('adds the variance of the error that smears it, however small', () => {
    for (const sd of [0.005, 0.02, 0.1]) {
      const wide: Plane = { ...plane, columns: axisAround({ mean: 1, sd: 0.3 }, 90) };
      const { columns } = momentsOf(blur(slanting(wide), 'columns', sd, 'empty'));
      expect(columns.sd ** 2).toBeCloseTo(0.04 + sd ** 2, 4);
    }
  });

  it('holds the edge of a likelihood', () => {
    const flat: LogDensity = { ...plane, logs: new Float64Array(2400) };
    for (const log of blur(flat, 'columns', 0.1, 'hold').logs) expect(log).toBeCloseTo(0, 10);
  });

  it('has the quantiles of a normal distribution', () => {
    const chances = weightsOf(slanting(plane).logs);
    const margin = marginOf(chances, plane.columns.count, 'columns');
    // 10 % of a normal lies below -1.28155 SD
    expect(quantileAlong(margin, plane.columns, 0.1)).toBeCloseTo(1 - 0.2 * 1.28155, 3);
    expect(quantileAlong(margin, plane.columns, 0.5)).toBeCloseTo(1, 3);
  });
});

/** Three columns at 10, 12 and 14, two rows at 0 and 1. */
const small: Plane = {
  columns: { from: 10, step: 2, count: 3 },
  rows: { from: 0, step: 1, count: 2 },
};
const shares = [0.1, 0.1, 0.2, 0.1, 0.2, 0.3];

describe('axisAround', () => {
  it('cuts 4.5 standard deviations to both sides into cells', () => {
    // 9 * 0.2 / 60 = 0.03, from 1 - 0.9 on; the middle of the first cell half a step further
    const { from, step, count } = axisAround({ mean: 1, sd: 0.2 }, 60);
    expect([from, step, count]).toEqual([expect.closeTo(0.115, 12), expect.closeTo(0.03, 12), 60]);
  });
});

describe('weightsOf', () => {
  it('scales to 1, however small the density is', () => {
    const weights = weightsOf(Float64Array.from([1, 3], (share) => Math.log(share) - 2000));
    expect(Array.from(weights)).toEqual([expect.closeTo(0.25, 9), expect.closeTo(0.75, 9)]);
    // and where the last is next to nothing beside the others
    expect(Array.from(weightsOf(Float64Array.of(0, 0, -800)))).toEqual([0.5, 0.5, 0]);
  });
});

describe('marginOf and momentsOf', () => {
  it('sum over the other axis', () => {
    const close = (...values: readonly number[]) => values.map((one) => expect.closeTo(one, 12));
    expect(Array.from(marginOf(shares, 3, 'columns'))).toEqual(close(0.2, 0.3, 0.5));
    expect(Array.from(marginOf(shares, 3, 'rows'))).toEqual(close(0.4, 0.6));
    const { columns, rows } = momentsOf({ ...small, logs: Float64Array.from(shares, Math.log) });
    // 0.3 * 12 + 0.5 * 14 + 0.2 * 10; 0.2 * 6.76 + 0.3 * 0.36 + 0.5 * 1.96; 0.6 and 0.6 * 0.4
    expect([columns.mean, columns.sd]).toEqual(close(12.6, Math.sqrt(2.44)));
    expect([rows.mean, rows.sd]).toEqual(close(0.6, Math.sqrt(0.24)));
  });
});

describe('quantileAlong', () => {
  const at = (margin: readonly number[], share: number) =>
    quantileAlong(margin, small.columns, share);

  it('spreads each cell evenly over its width', () => {
    // cells from 9 to 11, 13 and 15
    expect(at([0.2, 0.3, 0.5], 0.1)).toBeCloseTo(10, 12);
    expect(at([0.2, 0.3, 0.5], 0.2)).toBeCloseTo(11, 12);
    expect(at([0.2, 0.3, 0.5], 0.35)).toBeCloseTo(12, 12);
    expect(at([0.2, 0.3, 0.5], 0.75)).toBeCloseTo(14, 12);
  });

  it('begins where the first probability lies and ends with the last', () => {
    expect(at([0, 0.5, 0.5], 0)).toBe(11);
    expect(at([0.5, 0.5, 0], 1)).toBe(13);
    // a gap belongs to what follows: half of it all lies below 11 already
    expect(at([0.5, 0, 0.5], 0.5)).toBe(11);
    // sums that fall short of 1 by rounding
    expect(at([0.5, 0.25, 0.125], 1)).toBe(15);
  });
});

describe('blur', () => {
  const line = (count: number, place: number) =>
    Float64Array.from({ length: count }, (_, cell) => (cell === place ? 0 : -800));
  const across = (count: number, place: number): LogDensity => ({
    columns: { from: 0, step: 0.1, count },
    rows: { from: 0, step: 1, count: 1 },
    logs: line(count, place),
  });

  it('spreads a point as a normal error to four standard deviations', () => {
    const { logs } = blur(across(15, 7), 'columns', 0.1, 'empty');
    const chances = Array.from(logs, Math.exp);
    expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
    for (const step of [1, 2, 3, 4]) {
      expect((logs[7 + step] ?? 0) - (logs[7] ?? 0)).toBeCloseTo(-0.5 * step * step, 9);
      expect(logs[7 - step]).toBeCloseTo(logs[7 + step] ?? 0, 12);
    }
    expect(logs[12]).toBeLessThan(-600);
    expect(logs[2]).toBeLessThan(-600);
  });

  it('takes three weights of the same variance for an error below 0.6 cells, and a normal one from there', () => {
    const at = (sd: number) =>
      Array.from(blur(across(9, 4), 'columns', sd, 'empty').logs, Math.exp);
    // half a cell: 0.25 / 2 to each side
    expect(at(0.05).slice(3, 6)).toEqual(
      [0.125, 0.75, 0.125].map((one) => expect.closeTo(one, 12)),
    );
    expect(at(0.05)[2]).toBeLessThan(1e-200);
    expect(at(0.0601)[2]).toBeGreaterThan(1e-4);
    expect(at(0)[4]).toBe(1);
  });

  it('leaves a density empty beyond its plane, and holds the edges of a likelihood', () => {
    const at = (place: number, beyond: 'hold' | 'empty') =>
      Array.from(blur(across(9, place), 'columns', 0.05, beyond).logs, Math.exp);
    for (const [edge, beside] of [
      [0, 1],
      [8, 7],
    ] as const) {
      expect(at(edge, 'empty')[edge]).toBeCloseTo(0.75, 12);
      expect(at(edge, 'hold')[edge]).toBeCloseTo(0.875, 12);
      expect(at(edge, 'hold')[beside]).toBeCloseTo(0.125, 12);
    }
  });

  it('goes down the rows as it goes across, with an error for each line by its place', () => {
    // two columns at 10 and 12, nine rows; a point in the middle of each
    const logs = new Float64Array(18).fill(-800);
    logs.fill(0, 8, 10);
    const down: LogDensity = {
      columns: { from: 10, step: 2, count: 2 },
      rows: { from: 0, step: 0.1, count: 9 },
      logs,
    };
    const blurred = blur(down, 'rows', (place) => 0.005 * (place - 10) + 0.04, 'empty').logs;
    const sides = (column: number) =>
      [3, 4, 5].map((row) => Math.exp(blurred[2 * row + column] ?? 0));
    // 0.4 and 0.5 of a cell
    expect(sides(0)).toEqual([0.08, 0.84, 0.08].map((one) => expect.closeTo(one, 12)));
    expect(sides(1)).toEqual([0.125, 0.75, 0.125].map((one) => expect.closeTo(one, 12)));
  });

  it('takes the error of a row by its place', () => {
    const two: LogDensity = {
      columns: { from: 0, step: 0.1, count: 9 },
      rows: { from: 10, step: 2, count: 2 },
      logs: Float64Array.from([...line(9, 4), ...line(9, 4)]),
    };
    const logs = blur(two, 'columns', (place) => 0.005 * (place - 10) + 0.04, 'empty').logs;
    // 0.4 and 0.5 of a cell
    expect(Math.exp(logs[4] ?? 0)).toBeCloseTo(0.84, 12);
    expect(Math.exp(logs[9 + 4] ?? 0)).toBeCloseTo(0.75, 12);
  });

  it('keeps the scale of a density that is small everywhere', () => {
    const low = { ...across(9, 4), logs: line(9, 4).map((log) => log - 2000) };
    expect(blur(low, 'columns', 0.05, 'empty').logs[4]).toBeCloseTo(Math.log(0.75) - 2000, 9);
  });
});

describe('resample', () => {
  /** A straight logarithm over 5 by 4 cells, which a cubic reads off exactly. */
  const straight = (plane: Plane): LogDensity => ({
    ...plane,
    logs: Float64Array.from({ length: plane.columns.count * plane.rows.count }, (_, cell) => {
      const column = plane.columns.from + plane.columns.step * (cell % plane.columns.count);
      const row = plane.rows.from + plane.rows.step * Math.floor(cell / plane.columns.count);
      return 2 * column - 3 * row;
    }),
  });
  const old: Plane = {
    columns: { from: 0, step: 1, count: 5 },
    rows: { from: 0, step: 1, count: 4 },
  };

  it('has next to nothing beyond half a cell outside', () => {
    const wide = {
      columns: { from: -0.75, step: 0.25, count: 24 },
      rows: { from: -0.75, step: 0.25, count: 20 },
    };
    const expected = straight(wide).logs;
    resample(straight(old), wide).logs.forEach((log, cell) => {
      const column = -0.75 + 0.25 * (cell % 24);
      const row = -0.75 + 0.25 * Math.floor(cell / 24);
      const inside = column >= -0.5 && column <= 4.5 && row >= -0.5 && row <= 3.5;
      if (inside) expect(log).toBeCloseTo(expected[cell] ?? 0, 9);
      else expect(log).toBeLessThan(-600);
    });
  });

  it('runs straight through a cliff, between the cells on either side', () => {
    const logs = Float64Array.from({ length: 20 }, (_, cell) => (cell % 5 < 2 ? 0 : -100));
    const { logs: read } = resample(
      { ...old, logs },
      { columns: { from: 0.5, step: 0.25, count: 12 }, rows: old.rows },
    );
    // flat to the cell at 1, down to that at 2, flat after
    expect(Array.from(read.slice(0, 12))).toEqual(
      [0, 0, 0, -25, -50, -75, ...Array(6).fill(-100)].map((one) => expect.closeTo(one, 9)),
    );
  });
});
