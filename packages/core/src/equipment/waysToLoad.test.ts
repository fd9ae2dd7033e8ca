import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg, type Load, loadFromValue } from '../load/index.ts';
import type { PlateStock } from './Equipment.ts';
import type { PlateLoading, ReachableLoad } from './Loading.ts';
import { bothEnds, kgBar, kgPlates, plate } from './oracle/exampleGear.ts';
import { smallStock } from './oracle/smallGyms.ts';
import { reachableLoads } from './reachableLoads.ts';
import { waysToLoad } from './waysToLoad.ts';

function waysOf(...args: Parameters<typeof waysToLoad>): readonly ReachableLoad[] {
  const answer = waysToLoad(...args);
  if (answer.kind === 'none') throw new Error(answer.message);
  return answer.ways;
}

function weightsInside({ loading }: ReachableLoad): readonly number[] {
  const [left] = (loading as PlateLoading).stacks;
  return (left?.plates ?? []).map(({ weight }) => loadFromValue(weight));
}

/** How many mirrored loadings there are by load and pieces, all of them counted one by one. */
function countAll(stock: readonly PlateStock[]): ReadonlyMap<string, number> {
  let all = [{ load: loadFromValue({ value: 20, unit: 'kg' }) as number, pieces: 0 }];
  for (const { weight, pieces } of stock) {
    all = all.flatMap((way) =>
      Array.from({ length: Math.floor(pieces / 2) + 1 }, (_, pairs) => ({
        load: way.load + 2 * pairs * loadFromValue(weight),
        pieces: way.pieces + 2 * pairs,
      })),
    );
  }
  const counts = new Map<string, number>();
  for (const { load, pieces } of all) {
    const key = `${load} ${pieces}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

describe('waysToLoad', () => {
  it('lists 20, 10 + 10 and 10 + 5 + 5 for 60 kg, within two pairs more', () => {
    const range = { lightest: kg(60), heaviest: kg(60) };
    const ways = waysOf(kgBar(20), { plates: kgPlates([20, 10, 5], 4) }, range, 2);
    expect(ways.map(({ loading }) => loading)).toEqual([
      bothEnds(plate(20)),
      bothEnds(plate(10), plate(10)),
      bothEnds(plate(10), plate(5), plate(5)),
    ]);
  });

  it('lists as many loadings as counting finds, for every load and number of pieces', () => {
    fc.assert(
      fc.property(smallStock, fc.integer({ min: 0, max: 3 }), (plates, extra) => {
        const ways = waysOf(kgBar(20), { plates }, {}, extra);
        const found = new Map<string, number>();
        for (const { load, loading } of ways) {
          const key = `${load} ${loading.pieces}`;
          found.set(key, (found.get(key) ?? 0) + 1);
        }
        const fewest = new Map<number, number>();
        for (const key of countAll(plates).keys()) {
          const [load = 0, pieces = 0] = key.split(' ').map(Number);
          fewest.set(load, Math.min(pieces, fewest.get(load) ?? pieces));
        }
        const expected = [...countAll(plates)].filter(([key]) => {
          const [load = 0, pieces = 0] = key.split(' ').map(Number);
          return pieces <= (fewest.get(load) ?? 0) + 2 * extra;
        });
        expect(new Map([...found].sort())).toEqual(new Map(expected.sort()));
      }),
      { numRuns: 300 },
    );
  });

  it('holds, among ties, nothing heavier inside than what reachableLoads gives', () => {
    const unthick = smallStock.map((stock) =>
      stock.map(({ weight, pieces }) => ({ weight, pieces })),
    );
    fc.assert(
      fc.property(unthick, (plates) => {
        const list = reachableLoads(kgBar(20), { plates });
        if (list.kind === 'none') throw new Error(list.message);
        const given = new Map(list.loads.map((reachable) => [reachable.load, reachable]));
        for (const way of waysOf(kgBar(20), { plates }, {}, 0)) {
          const best = given.get(way.load);
          if (best === undefined) throw new Error('a load that is not reachable');
          const [a, b] = [weightsInside(best), weightsInside(way)];
          const first = a.findIndex((weight, index) => weight !== b[index]);
          if (first >= 0) expect(a[first]).toBeGreaterThan(b[first] ?? 0);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('names what cannot be listed', () => {
    const many = kgPlates([25, 20, 15, 10, 5, 2.5, 1.25, 1, 0.5, 0.25], 8);
    expect(waysToLoad(kgBar(20), { plates: many }, {}, 9)).toMatchObject({
      reason: 'too-many-loads',
    });
    expect(waysToLoad(kgBar(20), {}, { lightest: kg(30) }, 0)).toMatchObject({
      reason: 'nothing-in-range',
    });
    const band = { kind: 'band', id: 'band', name: 'Band' } as const;
    expect(waysToLoad(band, {}, {}, 0)).toMatchObject({ reason: 'resistance-unknown' });
    expect(() => waysToLoad(kgBar(20), {}, { lightest: 0 as Load }, -1)).toThrow(RangeError);
  });
});
