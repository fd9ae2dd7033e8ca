import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { rampTargets } from './rampTargets.ts';

const targets = (...args: Parameters<typeof rampTargets>) =>
  rampTargets(...args).map((load) => Math.round(100 * toKg(load)) / 100);

describe('rampTargets', () => {
  it('makes a single step at 60 %, or at the lightest load where that is heavier', () => {
    expect(targets(1, kg(20), kg(65), 'trained')).toEqual([39]);
    expect(targets(1, kg(50), kg(60), 'trained')).toEqual([50]);
  });

  // The jumps fall evenly to the one to the work load, which is 18, 13 or 10 % of it.
  it.each([
    [2, [20, 82]], // jumps 62 and 18
    [3, [20, 60.33, 87]], // jumps 40.33, 26.67 and 13: 80 in all
    [5, [20, 42, 61, 77, 90]], // jumps 22, 19, 16, 13 and 10
  ] as const)('makes %d steps from 20 to 100 kg', (steps, expected) => {
    expect(targets(steps, kg(20), kg(100), 'trained')).toEqual(expected);
  });

  it('keeps those new to lifting at 85 %, and at less where everybody is', () => {
    // jumps 17, 16.5, 16, 15.5 and 15
    expect(targets(5, kg(20), kg(100), 'new')).toEqual([20, 37, 53.5, 69.5, 85]);
    expect(targets(2, kg(20), kg(100), 'new')).toEqual([20, 82]);
  });

  it('opens at 30 % where the lightest load is below 15 %', () => {
    expect(targets(2, kg(15), kg(100), 'trained')).toEqual([15, 82]);
    expect(targets(2, kg(14.9), kg(100), 'trained')).toEqual([30, 82]);
  });

  it('shares a short way out evenly, so that no jump grows', () => {
    // 10 kg in three jumps, each below 13 % of 100 kg
    expect(targets(3, kg(90), kg(100), 'trained')).toEqual([90, 93.33, 96.67]);
  });
});
