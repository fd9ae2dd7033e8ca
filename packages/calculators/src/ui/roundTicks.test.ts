import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundTicks } from './roundTicks.ts';

describe('roundTicks', () => {
  it('takes round values', () => {
    expect(roundTicks(61, 79)).toEqual([65, 70, 75]);
    expect(roundTicks(0.11, 0.52)).toEqual([0.2, 0.4]);
    expect(roundTicks(40, 1040)).toEqual([250, 500, 750, 1000]);
  });

  it('lies inside, evenly, never more than six', () => {
    const ends = fc.tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: 1, max: 2000 }));
    fc.assert(
      fc.property(ends, ([from, width]) => {
        const values = roundTicks(from, from + width);
        expect(values.length).toBeLessThanOrEqual(6);
        expect(values.length).toBeGreaterThanOrEqual(1);
        for (const value of values) {
          expect(value).toBeGreaterThanOrEqual(from - 1e-6);
          expect(value).toBeLessThanOrEqual(from + width + 1e-6);
        }
      }),
    );
  });
});
