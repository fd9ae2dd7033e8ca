import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseRamp } from './chooseRamp.ts';
import { cheapestByMip } from './oracle/cheapestByMip.ts';
import { smallRamp } from './oracle/smallRamps.ts';

describe('chooseRamp against a general integer-program solver', () => {
  it('costs as little', async () => {
    const cheapest = await cheapestByMip();
    const small = smallRamp.filter(
      ({ above, ways, targets }) => above === undefined && ways.length * targets.length <= 36,
    );
    fc.assert(
      fc.property(small, (problem) => {
        expect(chooseRamp(problem).cost).toBe(cheapest(problem));
      }),
      { numRuns: 600 },
    );
  }, 240_000);
});
