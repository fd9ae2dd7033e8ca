import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loads, loadValues } from './loadArbitraries.testing.ts';
import { loadFromValue } from './loadFromValue.ts';
import { loadValue } from './loadValue.ts';

describe('loadValue', () => {
  it('reads back to the same load, whatever the load and the unit asked for', () => {
    fc.assert(
      fc.property(loads, fc.constantFrom('kg', 'lb'), (load, unit) => {
        expect(loadFromValue(loadValue(load, unit))).toBe(load);
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps the value and the unit a load was given in', () => {
    fc.assert(
      fc.property(loadValues, (given) => {
        expect(loadValue(loadFromValue(given), given.unit)).toEqual({
          value: given.value + 0,
          unit: given.unit,
        });
      }),
    );
  });
});
