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
