import { describe, expect, it } from 'vitest';
import { kg } from './kg.ts';
import { lb } from './lb.ts';
import { scaleLoad } from './scaleLoad.ts';

describe('scaleLoad', () => {
  // Each product worked by hand.
  it.each([
    [kg(125), 65, 100, kg(81.25)],
    [kg(175), 70, 100, kg(122.5)],
    [kg(175), 0.7, 1, kg(122.5)],
    [kg(50), 110, 100, kg(55)],
    [kg(50), 1.1, 1, kg(55)],
    [kg(140), 72.5, 100, kg(101.5)],
    [lb(225), 1, 2, lb(112.5)],
    [kg(7.5), -1, 3, kg(-2.5)],
    [kg(3), 1e-7, 1, kg(0.0000003)],
    [kg(3), 0, 1, kg(0)],
    [kg(20), 2, 0.5, kg(80)],
  ])('%d × %d ÷ %d', (load, times, over, expected) => {
    expect(scaleLoad(load, times, over)).toBe(expected);
  });

  it('rounds a part of a step once, a half away from zero', () => {
    expect(scaleLoad(kg(1e-11), 0.5)).toBe(kg(1e-11));
    expect(scaleLoad(kg(1e-11), -0.5)).toBe(kg(-1e-11));
    expect(scaleLoad(kg(1e-11), 0.49)).toBe(0);
    expect(scaleLoad(kg(40), 1, 3)).toBe(kg(13.33333333333));
  });

  it('refuses what is no ratio, and what gets too heavy', () => {
    expect(() => scaleLoad(kg(1), Number.NaN)).toThrow(/scaleLoad: times/);
    expect(() => scaleLoad(kg(1), 1, 0)).toThrow(/over must not be 0/);
    expect(() => scaleLoad(kg(1000), 100)).toThrow(RangeError);
  });
});
