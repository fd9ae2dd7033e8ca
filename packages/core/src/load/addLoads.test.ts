import { describe, expect, it } from 'vitest';
import { addLoads } from './addLoads.ts';
import { kg } from './kg.ts';
import { lb } from './lb.ts';
import { subtractLoad } from './subtractLoad.ts';
import { toKg } from './toKg.ts';
import { toLb } from './toLb.ts';

describe('addLoads', () => {
  it('weighs a bar with the same mixed plates on both sleeves', () => {
    const sleeve = addLoads(kg(20), lb(45), lb(2.5));
    const total = addLoads(kg(20), sleeve, sleeve);
    // By hand: 20 + 2 × (20 + 47.5 × 0.45359237) = 60 + 95 × 0.45359237 = 103.09127515 kg.
    expect(total).toBe(kg(103.09127515));
    // 103.09127515 ÷ 0.45359237 = 227.27735..., the case's 227.277 within its 0.01.
    expect(toLb(total)).toBeCloseTo(227.277, 2);
    // Not the 102.27 kg of calling a 45 lb plate 20 kg.
    expect(toKg(total) - 102.27).toBeGreaterThan(0.8);
  });

  it('weighs two 20 kg plates against two 45 lb plates', () => {
    const [left, right] = [addLoads(kg(20), kg(20)), addLoads(lb(45), lb(45))];
    // By hand: 90 × 0.45359237 = 40.8233133 kg.
    expect(addLoads(kg(20), left, right)).toBe(kg(100.8233133));
    expect(subtractLoad(right, left)).toBe(kg(0.8233133));
  });

  it('is 0 of nothing, and takes assistance off', () => {
    expect(addLoads()).toBe(0);
    expect(addLoads(kg(82), kg(-35))).toBe(kg(47));
  });

  it('has 0.1 + 0.2 = 0.3', () => {
    expect(addLoads(kg(0.1), kg(0.2))).toBe(kg(0.3));
  });

  it('refuses a sum beyond 45 t', () => {
    expect(() => addLoads(kg(45_000), kg(1))).toThrow(RangeError);
    expect(() => subtractLoad(kg(-45_000), kg(1))).toThrow(RangeError);
  });

  it('never gives a negative zero', () => {
    expect(Object.is(subtractLoad(kg(0), kg(0)), 0)).toBe(true);
  });
});
