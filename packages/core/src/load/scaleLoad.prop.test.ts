import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Load } from './Load.ts';
import { loads } from './loadArbitraries.testing.ts';
import { scaleLoad } from './scaleLoad.ts';

const tenths = fc.integer({ min: -1500, max: 1500 });

describe('scaleLoad', () => {
  it('is within half a step of the exact fraction', () => {
    fc.assert(
      fc.property(loads, tenths, (load, percentTenths) => {
        const smaller = Math.trunc(load / 2) as Load;
        const exactThousandths = BigInt(smaller) * BigInt(percentTenths);
        const got = BigInt(scaleLoad(smaller, percentTenths / 10, 100));
        const twiceError = 2n * (got * 1000n - exactThousandths);
        expect(twiceError <= 1000n && twiceError >= -1000n).toBe(true);
      }),
    );
  });

  it('is undone by the opposite ratio when nothing was rounded', () => {
    fc.assert(
      fc.property(loads, fc.integer({ min: 1, max: 1000 }), (load, factor) => {
        const small = Math.trunc(load / 1000) as Load;
        expect(scaleLoad(scaleLoad(small, factor), 1, factor)).toBe(small + 0);
      }),
    );
  });
});
