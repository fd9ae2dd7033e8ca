import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Load } from '../load/index.ts';
import type { LoadChoice, NextLoad } from './LoadChoice.ts';
import { nearestAtLeast } from './nearestAtLeast.ts';
import { nearestAtMost } from './nearestAtMost.ts';
import { nearestLoad } from './nearestLoad.ts';
import { nextDown } from './nextDown.ts';
import { nextUp } from './nextUp.ts';
import { kgBar } from './oracle/exampleGear.ts';
import { smallStock } from './oracle/smallGyms.ts';
import { reachableLoads } from './reachableLoads.ts';

const target = fc.integer({ min: 0, max: 500_000 }).map((grams) => (grams * 1e8) as Load);

function loadOf(choice: LoadChoice | NextLoad): number | undefined {
  return choice.kind === 'none' ? undefined : choice.chosen.load;
}

describe('choosing a load', () => {
  it('agrees with looking at every load', () => {
    fc.assert(
      fc.property(smallStock, target, fc.nat(), (plates, wish, pick) => {
        const list = reachableLoads(kgBar(20), { plates });
        if (list.kind === 'none') throw new Error(list.message);
        const loads = list.loads.map(({ load }) => load);
        for (const wanted of [wish, loads[pick % loads.length] ?? wish]) {
          const off = Math.min(...loads.map((load) => Math.abs(load - wanted)));
          const nearest = Math.min(...loads.filter((load) => Math.abs(load - wanted) === off));
          expect(loadOf(nearestLoad(list, wanted))).toBe(nearest);
          const below = loads.filter((load) => load <= wanted);
          expect(loadOf(nearestAtMost(list, wanted))).toBe(below.at(-1));
          const above = loads.filter((load) => load >= wanted);
          expect(loadOf(nearestAtLeast(list, wanted))).toBe(above[0]);
          expect(loadOf(nextUp(list, wanted))).toBe(loads.find((load) => load > wanted));
          expect(loadOf(nextDown(list, wanted))).toBe(loads.findLast((load) => load < wanted));
        }
      }),
      { numRuns: 300 },
    );
  });

  it('changes nothing the second time', () => {
    fc.assert(
      fc.property(smallStock, target, (plates, wish) => {
        const list = reachableLoads(kgBar(20), { plates });
        for (const rule of [nearestLoad, nearestAtMost, nearestAtLeast]) {
          const once = rule(list, wish);
          if (once.kind === 'none') continue;
          expect(rule(list, once.chosen.load)).toEqual({ kind: 'exact', chosen: once.chosen });
        }
      }),
      { numRuns: 300 },
    );
  });
});
