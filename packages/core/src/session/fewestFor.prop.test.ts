import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Candidate, fewestFor } from './fewestFor.ts';

const wishes = ['a', 'b', 'c', 'd'];
const candidate = fc.record({
  trains: fc.subarray(wishes, { minLength: 1 }),
  score: fc.integer({ min: 1, max: 9 }),
});

function subsets<T>(all: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: 2 ** all.length }, (_, bits) =>
    all.filter((__, at) => (bits >> at) & 1),
  );
}

const scoreOf = (set: readonly Candidate<string>[]) =>
  set.reduce((sum, { score }) => sum + score, 0);

it('finds the smallest set for all wishes, and of those the one with the highest score', () => {
  fc.assert(
    fc.property(fc.array(candidate, { minLength: 1, maxLength: 8 }), (candidates) => {
      const served = wishes.filter((wish) =>
        candidates.some(({ trains }) => trains.includes(wish)),
      );
      const found = fewestFor(served, candidates);
      const covering = subsets(candidates).filter((set) =>
        served.every((wish) => set.some(({ trains }) => trains.includes(wish))),
      );
      const fewest = Math.min(...covering.map((set) => set.length));
      expect(served.every((wish) => found.some(({ trains }) => trains.includes(wish)))).toBe(true);
      expect(found).toHaveLength(fewest);
      const best = Math.max(...covering.filter((set) => set.length === fewest).map(scoreOf));
      expect(scoreOf(found)).toBe(best);
    }),
  );
});
