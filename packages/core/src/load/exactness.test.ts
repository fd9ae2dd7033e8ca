import { describe, expect, it } from 'vitest';
import { divideToNearest } from './divideToNearest.ts';
import { kg } from './kg.ts';
import { LARGEST_LOAD } from './Load.ts';
import { lb } from './lb.ts';
import { loadValue } from './loadValue.ts';
import { parseLoad } from './parseLoad.ts';
import { scaleLoad } from './scaleLoad.ts';
import { toKg } from './toKg.ts';
import { toLb } from './toLb.ts';
import { unitOfWord } from './unitOfWord.ts';

describe('units, by the pound of 0.45359237 kg', () => {
  it('become one another', () => {
    expect(toKg(kg(62.5))).toBe(62.5);
    expect(toKg(lb(100))).toBe(45.359237);
    expect(toLb(lb(45))).toBe(45);
  });

  it('are kept where they can hold the load, and are kilograms elsewhere', () => {
    expect(loadValue(lb(2.5), 'lb')).toEqual({ value: 2.5, unit: 'lb' });
    expect(loadValue(kg(1), 'lb')).toEqual({ value: 1, unit: 'kg' });
    expect(loadValue(lb(1), 'kg')).toEqual({ value: 0.45359237, unit: 'kg' });
  });

  it('have words, with a point at the end or without, and no others', () => {
    expect(['kg.', 'LBS', '#', 'Pound'].map(unitOfWord)).toEqual(['kg', 'lb', 'lb', 'lb']);
    expect(['k.g', '.kg', 'stone', 'constructor'].map(unitOfWord)).toEqual(
      Array(4).fill(undefined),
    );
  });
});

describe('division to the nearest, a half away from zero', () => {
  it.each([
    [7n, 2n, 4n],
    [-7n, 2n, -4n],
    [7n, -2n, -4n],
    [-7n, -2n, 4n],
    [1n, 3n, 0n],
    [0n, -3n, 0n],
  ])('%i ÷ %i is %i', (dividend, divisor, quotient) => {
    expect(divideToNearest(dividend, divisor)).toBe(quotient);
  });
});

describe('the range of loads', () => {
  it('ends at 45 t, which is itself a load, on both sides', () => {
    for (const text of ['45000 kg', '-45000 kg']) {
      expect(parseLoad(text, { unit: 'kg' }).ok).toBe(true);
    }
    expect(kg(-45_000)).toBe(-LARGEST_LOAD);
    expect(kg(45_000 - 1e-6)).toBe(LARGEST_LOAD - 100_000);
    expect(parseLoad('-45000.00001', { unit: 'kg' }).ok).toBe(false);
    expect(() => kg(-45_000.1)).toThrow(/beyond the range/);
  });

  it('scales by numbers that are written with a power of ten', () => {
    expect(scaleLoad(kg(1), 1e-7)).toBe(kg(0.0000001));
    expect(scaleLoad(kg(1e-11), 1e21, 1e20)).toBe(kg(1e-10));
  });
});
