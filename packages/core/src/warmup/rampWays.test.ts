import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { rampWays } from './rampWays.ts';

/** One post, on which every piece counts by itself. */
function waysOn(...stock: readonly (readonly [kilograms: number, pieces: number])[]) {
  return waysUpTo(1000, ...stock);
}

function waysUpTo(
  heaviest: number,
  ...stock: readonly (readonly [kilograms: number, pieces: number])[]
) {
  return rampWays(
    {
      kind: 'one-post',
      form: 'loading-pin',
      id: 'pin',
      name: 'Pin',
      base: { value: 1, unit: 'kg' },
      plates: stock.map(([value, pieces]) => ({ weight: { value, unit: 'kg' }, pieces })),
    },
    {},
    kg(heaviest),
  );
}

/** Kinds so small that they change no sum of others: 5 × 5 × 5 ways of none to four each. */
const fine = [
  [0.001, 4],
  [0.01, 4],
  [0.1, 4],
] as const;

describe('rampWays', () => {
  it('has the ways of up to three pieces more than the fewest', () => {
    // 20, 10 + 10, 10 + 5 + 5, four 5
    const twenties = waysOn([20, 1], [10, 2], [5, 4]);
    if (!Array.isArray(twenties)) throw new Error('none');
    expect(
      twenties.filter(({ load }) => load === kg(21)).map(({ loading }) => loading.pieces),
    ).toEqual([1, 2, 3, 4]);
    const tens = waysOn([20, 1], [4, 5]);
    if (!Array.isArray(tens)) throw new Error('none');
    // five times 4 are four pieces more
    expect(tens.filter(({ load }) => load === kg(21))).toHaveLength(1);
  });

  it('has 5000 of them', () => {
    // 10 and four 5 make 10 ways for 7 loads: 10 × 4 × 125
    expect(waysOn([10, 1], [5, 4], [1, 3], ...fine)).toHaveLength(5000);
  });

  it('has fewer to each load where there would be more than 5000', () => {
    // 15, two 10 and 5 make 12 ways for 9 loads, of which 10 take the fewest pieces, since
    // 15 + 5 are as many as 10 + 10: 12 × 4 × 125 are too many, 10 × 4 × 125 are not
    expect(waysOn([15, 1], [10, 2], [5, 1], [1, 3], ...fine)).toHaveLength(5000);
    // five times as many fine ones: one way for each of 9 × 5 × 125 loads
    expect(waysOn([15, 1], [10, 2], [5, 1], [1, 4], ...fine)).toHaveLength(5625);
    // and without the heaviest, 1 + 40 and what is fine
    expect(waysUpTo(40.9, [15, 1], [10, 2], [5, 1], [1, 4], ...fine)).toHaveLength(5000);
  });

  it('has one way for each load where the ways cannot be listed', () => {
    // 12 × 15 × 125 ways, 10 × 15 × 125 of fewest pieces, for 9 × 15 × 125 loads; and more than
    // 20,000 of the first are not listed
    expect(waysOn([15, 1], [10, 2], [5, 1], [0.25, 14], ...fine)).toHaveLength(16_875);
  });

  it('passes on that there are too many loads, and what else there is to say', () => {
    expect(waysOn([1, 9], [10, 9], [100, 9], ...fine)).toMatchObject({
      kind: 'none',
      reason: 'too-many-loads',
    });
    const band = { kind: 'band', id: 'band', name: 'Band' } as const;
    expect(rampWays(band, {}, kg(100))).toMatchObject({ reason: 'resistance-unknown' });
  });
});
