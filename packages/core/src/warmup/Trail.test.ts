import { describe, expect, it } from 'vitest';
import type { ReachableLoad } from '../equipment/index.ts';
import { kg, type Load } from '../load/index.ts';
import { cheapestTrail, keepBest, type Trail } from './Trail.ts';

const way: ReachableLoad = {
  load: kg(20),
  shown: kg(20),
  loading: { kind: 'plates', stacks: [], pieces: 0 },
};
const trail = (before: number, cost: number): Trail => ({ before, cost, chain: { way } });
const kept = (...trails: readonly Trail[]) =>
  keepBest(trails).map(({ before, cost }) => [before, cost]);

describe('keepBest', () => {
  it('keeps a trail from a heavier step only where it is cheaper than all from lighter ones', () => {
    expect(kept(trail(30, 6), trail(10, 5), trail(20, 7), trail(40, 4))).toEqual([
      [10, 5],
      [40, 4],
    ]);
  });

  it('keeps one of two that are alike or come from the same step', () => {
    expect(kept(trail(10, 5), trail(10, 3))).toEqual([[10, 3]]);
    expect(kept(trail(20, 5), trail(10, 5))).toEqual([[10, 5]]);
    expect(kept(trail(10, 5), trail(10, 5))).toEqual([[10, 5]]);
    expect(kept(trail(10, 5))).toEqual([[10, 5]]);
    expect(kept()).toEqual([]);
  });
});

describe('cheapestTrail', () => {
  const from = (...trails: readonly Trail[]) =>
    cheapestTrail(trails, 40 as Load, 60 as Load, { work: 100 as Load, growthCost: 10 });

  it('charges for a jump that is larger than the one before it', () => {
    // from 20 the jumps are 20 and 20, from 30 they are 10 and 20
    expect(from(trail(20, 5), trail(30, 1))).toMatchObject({ trail: { before: 20 }, cost: 5 });
    expect(from(trail(20, 12), trail(30, 1))).toMatchObject({ trail: { before: 30 }, cost: 11 });
  });

  it('has none where there is none', () => {
    expect(from()).toEqual({ trail: undefined, cost: Number.POSITIVE_INFINITY });
  });
});
