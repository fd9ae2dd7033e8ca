import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg, type Load, loadFromValue } from '../load/index.ts';
import type { PlateStock } from './Equipment.ts';
import type { PlateLoading, ReachableLoad } from './Loading.ts';
import type { LoadRange } from './LoadRange.ts';
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

  it('lists only what fits on the sleeve', () => {
    const plates = [
      { ...plate(20), pieces: 2, thicknessMm: 30 },
      { ...plate(10), pieces: 4, thicknessMm: 20 },
    ];
    const range = { lightest: kg(60), heaviest: kg(60) };
    const ways = waysOf({ ...kgBar(20), sleeveMm: 39.9 }, { plates }, range, 5);
    expect(ways.map(({ loading }) => loading.pieces)).toEqual([2]);
    expect(waysOf({ ...kgBar(20), sleeveMm: 40 }, { plates }, range, 5)).toHaveLength(2);
  });

  it('keeps to a range to the very step', () => {
    const plates = kgPlates([5], 4);
    const loads = (range: LoadRange) =>
      waysOf(kgBar(20), { plates }, range, 1).map(({ load }) => load);
    // 20, 30 and 40
    expect(loads({ lightest: kg(30), heaviest: kg(30) })).toEqual([kg(30)]);
    expect(loads({ lightest: (kg(30) + 1) as Load })).toEqual([kg(40)]);
    expect(loads({ heaviest: (kg(30) - 1) as Load })).toEqual([kg(20)]);
    expect(waysToLoad(kgBar(20), { plates }, { heaviest: kg(19) }, 1)).toMatchObject({
      kind: 'none',
      reason: 'nothing-in-range',
    });
  });

  it('lists the help of a machine beside the plates on a belt', () => {
    const bodyWeight = { value: 80, unit: 'kg' } as const;
    const assistance = [{ value: 20, unit: 'kg' }] as const;
    const station = { kind: 'body', id: 'it', name: 'It', belt: {}, assistance } as const;
    const ways = waysToLoad(station, { bodyWeight, plates: kgPlates([10], 1) }, {}, 1);
    // nothing on the belt, and no belt, are two ways to the same load
    expect(ways).toMatchObject({
      kind: 'ways',
      ways: [60, 80, 80, 90].map((value) => ({ load: kg(value) })),
    });
  });

  it('finds the one way in few pieces among very many in more', () => {
    const plates = kgPlates([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 60);
    const range = { lightest: kg(180), heaviest: kg(180) };
    // 20 and 80 a side: eight of 10, or sums of up to 30 whole numbers, hundreds of thousands
    expect(waysOf(kgBar(20), { plates }, range, 0)).toMatchObject([
      { loading: bothEnds(...new Array(8).fill(plate(10))) },
    ]);
  });

  it('lists 20,000 ways, and no more', () => {
    const post = (fives: number) =>
      ({
        kind: 'one-post',
        form: 'loading-pin',
        id: 'it',
        name: 'It',
        base: { value: 1, unit: 'kg' },
        plates: [...kgPlates([1000, 2000, 3000, 4000], 4), ...kgPlates([5], fives)],
      }) as const;
    // none to four of four kinds and none to 31 of one: 5 × 5 × 5 × 5 × 32
    expect(waysOf(post(31), {}, {}, 50)).toHaveLength(20_000);
    expect(waysToLoad(post(32), {}, {}, 50)).toMatchObject({ reason: 'too-many-loads' });
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
    const rack = {
      kind: 'fixed',
      form: 'dumbbell',
      id: 'rack',
      name: 'Rack',
      weights: [],
    } as const;
    expect(waysToLoad(rack, {}, {}, 0)).toMatchObject({ reason: 'nothing-in-stock' });
    for (const wrong of [-1, 51, Number.NaN]) {
      expect(() => waysToLoad(kgBar(20), {}, {}, wrong)).toThrow(/^waysToLoad: extraGroups/);
    }
  });
});
