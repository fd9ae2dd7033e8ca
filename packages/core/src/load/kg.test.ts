import { describe, expect, it } from 'vitest';
import { kg } from './kg.ts';
import { lb } from './lb.ts';

describe('kg and lb', () => {
  it('count whole steps of 10 ng', () => {
    expect(kg(1)).toBe(100_000_000_000);
    expect(kg(0.1)).toBe(10_000_000_000);
    expect(kg(1e-11)).toBe(1);
    expect(kg(-2.5)).toBe(-250_000_000_000);
    expect(lb(1)).toBe(45_359_237_000);
    expect(lb(0.001)).toBe(45_359_237);
  });

  it('keep zero free of a sign', () => {
    expect(Object.is(kg(-0), 0)).toBe(true);
  });

  it('reach 45 t and no further', () => {
    expect(kg(45_000)).toBe(4_500_000_000_000_000);
    expect(() => kg(45_000.1)).toThrow(/kg: 45000.1 kg is beyond the range/);
    expect(() => lb(99_209)).toThrow(/lb: 99209 lb is beyond the range/);
    expect(() => kg(1e300)).toThrow(RangeError);
  });

  it('refuse what is finer than a step, or no number', () => {
    expect(() => kg(1e-12)).toThrow(/finer than the smallest step/);
    expect(() => lb(0.0001)).toThrow(/finer than the smallest step/);
    expect(() => kg(Number.NaN)).toThrow(/kg: value must be a finite number, got NaN/);
    expect(() => lb(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
