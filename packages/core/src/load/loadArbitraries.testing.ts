import fc from 'fast-check';
import type { Load, LoadValue } from './Load.ts';
import { LARGEST_LOAD } from './Load.ts';

/** Loads of up to 2 t in either unit, in thousandths, assistance included. */
export const loadValues: fc.Arbitrary<LoadValue> = fc.record({
  value: fc.integer({ min: -2_000_000, max: 2_000_000 }).map((thousandths) => thousandths / 1000),
  unit: fc.constantFrom('kg', 'lb'),
});

/** Any load at all, in steps. */
export const loads: fc.Arbitrary<Load> = fc
  .integer({ min: -LARGEST_LOAD, max: LARGEST_LOAD })
  .map((steps) => (steps + 0) as Load);
