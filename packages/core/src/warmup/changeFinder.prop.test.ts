import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeLoading, type ReachableLoad } from '../equipment/index.ts';
import { kg } from '../load/index.ts';
import { changeFinder } from './changeFinder.ts';
import { smallRamp } from './oracle/smallRamps.ts';

function onBar(...weights: readonly number[]): ReachableLoad {
  const plates = weights.map((value) => ({ weight: { value, unit: 'kg' as const } }));
  const stacks = (['left', 'right'] as const).map((place) => ({ place, plates }));
  const loading = { kind: 'plates', stacks, pieces: 2 * plates.length } as const;
  return { load: kg(20), shown: kg(20), loading };
}

const places = fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 3000 })), {
  minLength: 1,
  maxLength: 4,
});

describe('changeFinder', () => {
  it('finds what going over from each loading to each one costs, again and again', () => {
    fc.assert(
      fc.property(smallRamp, places, places, ({ ways, pieceCost }, one, other) => {
        const find = changeFinder(ways, pieceCost);
        for (const starts of [one, other]) {
          const from = starts.flatMap(([place]) => ways[place % ways.length] ?? []);
          const costs = starts.map(([, cost]) => cost);
          const found = find(from, costs, ways);
          for (const [at, to] of ways.entries()) {
            const each = from.map(
              (way, i) =>
                (costs[i] ?? 0) + pieceCost * changeLoading(way.loading, to.loading).pieces,
            );
            expect(found.costs[at]).toBe(Math.min(...each));
            expect(each[found.from[at] ?? -1]).toBe(found.costs[at]);
          }
        }
      }),
    );
  });

  it('forgets what it found before', () => {
    // 20 and 10 on each end, in this order, and one or the other
    const [none, ten, twenty, both] = [[], [10], [20], [20, 10]].map((weights) =>
      onBar(...weights),
    );
    const ways = [none, ten, twenty, both].filter((way) => way !== undefined);
    const find = changeFinder(ways, 1);
    // each is cheaper than the one before, so that every stack is come to again and again
    const often = ways.flatMap((way) => [way, way, way]);
    const falling = often.map((_, index) => 1000 - 100 * index);
    find(often, falling, ways);
    expect([...find(ways.slice(0, 1), [5000], ways).costs]).toEqual([5000, 5002, 5002, 5004]);
  });
});
