import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addLoads, loadFromValue } from '../load/index.ts';
import type { Barbell, PlateStock } from './Equipment.ts';
import type { PlateLoading, ReachableLoad } from './Loading.ts';
import { bruteForceLoads } from './oracle/bruteForceLoads.ts';
import { kgBar } from './oracle/exampleGear.ts';
import { sleeve, smallStock } from './oracle/smallGyms.ts';
import { reachableLoads } from './reachableLoads.ts';
import { samePlate } from './samePlate.ts';
import { weighLoading } from './weighLoading.ts';

function loadsOf(bar: Barbell, plates: readonly PlateStock[]): readonly ReachableLoad[] {
  const answer = reachableLoads(bar, { plates });
  if (answer.kind === 'none') throw new Error(answer.message);
  return answer.loads;
}

function barWith(sleeveMm: number | undefined): Barbell {
  const bar: Barbell = { ...kgBar(20), collar: { value: 0.5, unit: 'lb' } };
  return sleeveMm === undefined ? bar : { ...bar, sleeveMm };
}

function sleeveOf(loading: PlateLoading) {
  const plates = loading.stacks[0]?.plates ?? [];
  return {
    plates,
    room: plates.reduce((sum, { thicknessMm = 0 }) => sum + Math.round(thicknessMm * 1000), 0),
  };
}

describe('reachableLoads', () => {
  it('finds what trying every loading finds: the same loads, pieces and room', () => {
    fc.assert(
      fc.property(smallStock, sleeve, (plates, sleeveMm) => {
        const bar = barWith(sleeveMm);
        const expected = [...bruteForceLoads(bar, plates).values()].sort((a, b) => a.load - b.load);
        const found = loadsOf(bar, plates).map(({ load, loading }) => {
          const { room } = sleeveOf(loading as PlateLoading);
          return { load, pieces: loading.pieces, room };
        });
        expect(found).toEqual(expected);
      }),
      { numRuns: 3000 },
    );
  });

  it('writes loadings that weigh what they say, heavy plates inside, from stock only', () => {
    fc.assert(
      fc.property(smallStock, sleeve, (plates, sleeveMm) => {
        const bar = barWith(sleeveMm);
        for (const { load, loading } of loadsOf(bar, plates)) {
          const weighed = weighLoading(bar, loading);
          expect(weighed.kind === 'weighed' && weighed.load).toBe(load);
          const stack = sleeveOf(loading as PlateLoading).plates;
          const weights = stack.map(({ weight }) => loadFromValue(weight));
          expect(weights).toEqual(weights.toSorted((a, b) => b - a));
          for (const plate of stack) {
            const used = 2 * stack.filter((other) => samePlate(other, plate)).length;
            const owned = plates
              .filter((stock) => samePlate(stock, plate))
              .reduce((sum, { pieces }) => sum + pieces, 0);
            expect(used).toBeLessThanOrEqual(owned);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('never loses a load, nor needs more pieces, when plates are added', () => {
    fc.assert(
      fc.property(smallStock, smallStock, sleeve, (plates, more, sleeveMm) => {
        const bar = barWith(sleeveMm);
        const after = new Map(
          loadsOf(bar, [...plates, ...more]).map(({ load, loading }) => [load, loading.pieces]),
        );
        for (const { load, loading } of loadsOf(bar, plates)) {
          expect(after.get(load)).toBeLessThanOrEqual(loading.pieces);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('gives exactly the loads of the whole list that lie in a range', () => {
    fc.assert(
      fc.property(smallStock, fc.nat(), fc.nat(), (plates, a, b) => {
        const all = loadsOf(barWith(undefined), plates);
        const [low, high] = [a % all.length, b % all.length].sort((x, y) => x - y);
        const [lightest, heaviest] = [all[low ?? 0], all[high ?? 0]];
        if (lightest === undefined || heaviest === undefined) throw new Error('no ends');
        const range = { lightest: lightest.load, heaviest: heaviest.load };
        expect(reachableLoads(barWith(undefined), { plates }, range)).toMatchObject({
          loads: all.slice(low, (high ?? 0) + 1),
        });
      }),
      { numRuns: 300 },
    );
  });

  it('leaves its arguments as they were', () => {
    fc.assert(
      fc.property(smallStock, (plates) => {
        const before = JSON.stringify(plates);
        reachableLoads(kgBar(20), { plates });
        expect(JSON.stringify(plates)).toBe(before);
      }),
      { numRuns: 50 },
    );
  });

  it('adds collars twice', () => {
    fc.assert(
      fc.property(smallStock, fc.constantFrom(0.25, 1, 2.5), (plates, value) => {
        const collar = { value, unit: 'kg' } as const;
        const bare = loadsOf(kgBar(20), plates).map(({ load }) =>
          addLoads(load, loadFromValue(collar), loadFromValue(collar)),
        );
        expect(loadsOf({ ...kgBar(20), collar }, plates).map(({ load }) => load)).toEqual(bare);
      }),
      { numRuns: 100 },
    );
  });
});
