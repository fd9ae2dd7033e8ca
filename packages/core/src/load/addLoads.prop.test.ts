import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addLoads } from './addLoads.ts';
import type { LoadValue } from './Load.ts';
import { loadValues } from './loadArbitraries.testing.ts';
import { loadFromValue } from './loadFromValue.ts';
import { subtractLoad } from './subtractLoad.ts';

/** Oracle: the load in units of 1e-11 kg from its decimal digits, by whole numbers only. */
function hundredBillionths({ value, unit }: LoadValue): bigint {
  const thousandths = BigInt(Math.round(value * 1000));
  return thousandths * (unit === 'kg' ? 100_000_000n : 45_359_237n);
}

describe('sums of mixed kg and lb', () => {
  it('are exact, in any order', () => {
    fc.assert(
      fc.property(fc.array(loadValues, { maxLength: 20 }), (values) => {
        const loads = values.map(loadFromValue);
        const exact = values.reduce((sum, value) => sum + hundredBillionths(value), 0n);
        expect(BigInt(addLoads(...loads))).toBe(exact);
        expect(addLoads(...loads.toReversed())).toBe(addLoads(...loads));
      }),
    );
  });

  it('are undone by taking off', () => {
    fc.assert(
      fc.property(loadValues, loadValues, (first, second) => {
        const [a, b] = [loadFromValue(first), loadFromValue(second)];
        expect(subtractLoad(addLoads(a, b), b)).toBe(a);
      }),
    );
  });
});
