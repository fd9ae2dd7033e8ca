import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeLoading } from '../equipment/index.ts';
import { changeFinder } from './changeFinder.ts';
import { smallRamp } from './oracle/smallRamps.ts';

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
});
