import { describe, expect, it } from 'vitest';
import { kg, type Load, scaleLoad, toKg } from '../load/index.ts';
import type { LoadChoice } from './LoadChoice.ts';
import { nearestAtLeast } from './nearestAtLeast.ts';
import { nearestAtMost } from './nearestAtMost.ts';
import { nearestLoad } from './nearestLoad.ts';
import { nextDown } from './nextDown.ts';
import { nextUp } from './nextUp.ts';
import { kgBar, kgPlates } from './oracle/exampleGear.ts';
import { reachableLoads } from './reachableLoads.ts';

const coarse = reachableLoads(kgBar(20), { plates: kgPlates([20, 10, 5, 2.5], 4) });
const fine = reachableLoads(kgBar(20), { plates: kgPlates([20, 10, 5, 2.5, 1.25], 6) });
const bare = reachableLoads(kgBar(20));

function chosen(choice: LoadChoice): readonly [number, string] | string {
  if (choice.kind === 'none') return choice.reason;
  return [toKg(choice.chosen.load), choice.kind === 'near' ? choice.reason : 'exact'];
}

describe('nearestLoad, nearestAtMost, nearestAtLeast', () => {
  it('take the nearest total that the bar can hold', () => {
    expect(chosen(nearestLoad(coarse, kg(62)))).toEqual([60, 'between-two-loads']);
    expect(chosen(nearestAtMost(coarse, kg(64.9)))).toEqual([60, 'between-two-loads']);
    expect(chosen(nearestAtLeast(coarse, kg(60.1)))).toEqual([65, 'between-two-loads']);
  });

  it('take the lighter one half way between two', () => {
    expect(chosen(nearestLoad(coarse, kg(62.5)))).toEqual([60, 'between-two-loads']);
  });

  it('say by how much the load differs', () => {
    expect(nearestLoad(coarse, kg(63))).toMatchObject({ kind: 'near', difference: kg(2) });
    expect(nearestAtMost(coarse, kg(63))).toMatchObject({ kind: 'near', difference: kg(-3) });
  });

  it('say when the bar is heavier than the target', () => {
    expect(chosen(nearestLoad(fine, kg(12)))).toEqual([20, 'lightest-is-heavier']);
    expect(chosen(nearestAtMost(fine, kg(12)))).toBe('lightest-is-heavier');
    expect(chosen(nearestAtLeast(fine, kg(12)))).toEqual([20, 'lightest-is-heavier']);
  });

  it('say when the target is more than the gym can make, and what it can make', () => {
    // pairs: 2 × (20 + 10 + 5 + 2.5) a side = 75, so 20 + 150 = 170
    expect(chosen(nearestLoad(coarse, kg(180)))).toEqual([170, 'heaviest-is-lighter']);
    expect(chosen(nearestAtMost(coarse, kg(180)))).toEqual([170, 'heaviest-is-lighter']);
    expect(chosen(nearestAtLeast(coarse, kg(180)))).toBe('heaviest-is-lighter');
  });

  it('say when there is nothing to put on the bar', () => {
    expect(chosen(nearestLoad(bare, kg(30)))).toEqual([20, 'nothing-to-add']);
    expect(chosen(nearestAtLeast(bare, kg(30)))).toBe('nothing-to-add');
  });

  it('pass on the reason when no load is known at all', () => {
    const band = reachableLoads({ kind: 'band', id: 'band', name: 'Band' });
    expect(chosen(nearestLoad(band, kg(10)))).toBe('resistance-unknown');
    expect(nextUp(band, kg(10))).toMatchObject({ kind: 'none', reason: 'resistance-unknown' });
    expect(nextDown(band, kg(10))).toMatchObject({ kind: 'none', reason: 'resistance-unknown' });
  });

  it('leave an exact product alone under every rule: 70 % of 175, 110 % of 50', () => {
    // as binary fractions these are 122.49999999999999 and 55.00000000000001
    for (const [load, percent, whole] of [
      [175, 70, 122.5],
      [50, 110, 55],
    ] as const) {
      const target = scaleLoad(kg(load), percent, 100);
      for (const rule of [nearestLoad, nearestAtMost, nearestAtLeast]) {
        expect(chosen(rule(fine, target))).toEqual([whole, 'exact']);
      }
    }
  });

  it('keep a plan of 2.5 % a week moving when only its use is rounded, not the plan', () => {
    const rack = reachableLoads({
      kind: 'fixed',
      form: 'dumbbell',
      id: 'rack',
      name: 'Rack',
      weights: [30, 32.5, 35].map((value) => ({ weight: { value, unit: 'kg' }, pieces: 2 })),
    });
    const plan: Load[] = [kg(30)];
    for (let week = 0; week < 4; week += 1) plan.push(scaleLoad(plan.at(-1) ?? kg(0), 102.5, 100));
    // 30, 30.75, 31.51875, 32.30671875, 33.11438671875
    expect(plan.map((load) => chosen(nearestAtMost(rack, load))[0])).toEqual([
      30, 30, 30, 30, 32.5,
    ]);
    expect(plan.map((load) => chosen(nearestLoad(rack, load))[0])).toEqual([
      30, 30, 32.5, 32.5, 32.5,
    ]);
  });

  it('say that a travel rack is too light', () => {
    const hotel = reachableLoads({
      kind: 'fixed',
      form: 'dumbbell',
      id: 'hotel',
      name: 'Hotel rack',
      weights: [5, 10, 15, 20].map((value) => ({ weight: { value, unit: 'kg' }, pieces: 2 })),
    });
    expect(chosen(nearestLoad(hotel, kg(30)))).toEqual([20, 'heaviest-is-lighter']);
  });

  it('give a reason in the same words with a load and without one', () => {
    const nearest = nearestLoad(fine, kg(12));
    const none = nearestAtMost(fine, kg(12));
    if (nearest.kind !== 'near' || none.kind !== 'none') throw new Error('another answer');
    expect(nearest.message).toMatch(/\w+\.$/);
    expect(none.message).toBe(nearest.message);
  });

  it.each(Object.entries({ nearestLoad, nearestAtMost, nearestAtLeast, nextUp, nextDown }))(
    'refuse a load that is not a number: %s',
    (name, rule) => {
      for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY]) {
        expect(() => rule(fine, wrong as Load)).toThrow(
          new RegExp(`^${name}: .* in steps must be`),
        );
      }
    },
  );
});

describe('nextUp and nextDown', () => {
  it('take the neighbours of a load, reachable or not', () => {
    expect(nextUp(coarse, kg(60))).toMatchObject({ kind: 'next', chosen: { load: kg(65) } });
    expect(nextUp(coarse, kg(61))).toMatchObject({ chosen: { load: kg(65) } });
    expect(nextDown(coarse, kg(60))).toMatchObject({ kind: 'next', chosen: { load: kg(55) } });
    expect(nextDown(coarse, kg(61))).toMatchObject({ chosen: { load: kg(60) } });
  });

  it('name both ends of the list', () => {
    expect(nextUp(coarse, kg(170))).toMatchObject({ kind: 'none', reason: 'heaviest-is-lighter' });
    expect(nextUp(bare, kg(20))).toMatchObject({ kind: 'none', reason: 'nothing-to-add' });
    expect(nextDown(coarse, kg(20))).toMatchObject({ kind: 'none', reason: 'lightest-is-heavier' });
  });
});
