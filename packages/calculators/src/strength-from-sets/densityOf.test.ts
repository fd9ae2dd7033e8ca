import { kg } from '@windlass/core/load';
import { generalCurve, oneRepMaxKg, priorFor, strengthFrom } from '@windlass/core/strength';
import { describe, expect, it } from 'vitest';
import { densityOf } from './densityOf.ts';

describe('densityOf', () => {
  const belief = strengthFrom({
    sets: [{ load: kg(60), reps: 8, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
    prior: priorFor(generalCurve),
    today: 0,
  });
  if (belief.kind !== 'posterior') throw new Error(belief.kind);
  const points = densityOf(belief);

  it('reaches 1 at its top and next to nothing at its ends', () => {
    const heights = points.map(({ height }) => height);
    expect(Math.max(...heights)).toBe(1);
    expect(heights[0]).toBeLessThan(0.02);
    expect(heights.at(-1)).toBeLessThan(0.02);
  });

  it('has four fifths of its area inside the band of 8 in 10', () => {
    // Trapezia between points; a tolerance of 0.03, because the grid is coarse beside the band.
    const { low, high } = oneRepMaxKg(belief);
    const area = (from: number, to: number) =>
      points.slice(1).reduce((sum, point, at) => {
        const before = points[at] ?? point;
        const middle = (point.kg + before.kg) / 2;
        const inside = middle >= from && middle <= to;
        return sum + (inside ? ((point.height + before.height) / 2) * (point.kg - before.kg) : 0);
      }, 0);
    expect(Math.abs(area(low, high) / area(0, 1e6) - 0.8)).toBeLessThan(0.03);
  });
});
