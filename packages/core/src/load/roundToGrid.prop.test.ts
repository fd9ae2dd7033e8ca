import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isOnGrid } from './isOnGrid.ts';
import { LARGEST_LOAD, type Load } from './Load.ts';
import type { LoadGrid } from './LoadGrid.ts';
import { loads } from './loadArbitraries.testing.ts';
import { type GridRounding, roundToGrid } from './roundToGrid.ts';

/** Wide enough to test the arithmetic, narrow enough that the neighbours of any load exist. */
const grids: fc.Arbitrary<Required<LoadGrid>> = fc.record({
  step: fc.integer({ min: 1, max: LARGEST_LOAD / 2 }).map((steps) => steps as Load),
  start: loads,
});
const withinReach = loads.map((load) => Math.trunc(load / 2) as Load);
const rules: fc.Arbitrary<GridRounding> = fc.constantFrom('nearest', 'down', 'up');

/** Oracle: the same rule on whole numbers without limit, by floor division. */
function onRationals(load: bigint, step: bigint, start: bigint, rule: GridRounding): bigint {
  const distance = load - start;
  const floor = distance / step - (distance % step < 0n ? 1n : 0n);
  const low = start + floor * step;
  const high = low === load ? low : low + step;
  if (rule === 'down') return low;
  if (rule === 'up') return high;
  return high - load < load - low ? high : low;
}

describe('roundToGrid', () => {
  it('agrees with unlimited whole numbers', () => {
    fc.assert(
      fc.property(withinReach, grids, rules, (load, grid, rule) => {
        const expected = onRationals(BigInt(load), BigInt(grid.step), BigInt(grid.start), rule);
        expect(BigInt(roundToGrid(load, grid, rule))).toBe(expected);
      }),
      { numRuns: 1000 },
    );
  });

  it('lands on the grid, changes nothing the second time, and brackets the load', () => {
    fc.assert(
      fc.property(withinReach, grids, rules, (load, grid, rule) => {
        const rounded = roundToGrid(load, grid, rule);
        expect(isOnGrid(rounded, grid)).toBe(true);
        expect(roundToGrid(rounded, grid, 'down')).toBe(rounded);
        expect(roundToGrid(rounded, grid, 'up')).toBe(rounded);
        expect(roundToGrid(load, grid, 'down')).toBeLessThanOrEqual(load);
        expect(roundToGrid(load, grid, 'up')).toBeGreaterThanOrEqual(load);
      }),
    );
  });
});
