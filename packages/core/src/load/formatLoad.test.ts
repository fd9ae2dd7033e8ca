import { describe, expect, it } from 'vitest';
import { addLoads } from './addLoads.ts';
import { formatLoad } from './formatLoad.ts';
import { kg } from './kg.ts';
import { lb } from './lb.ts';

const mixed = addLoads(kg(20), lb(45), lb(45)); // 60.8233133 kg
const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

describe('formatLoad', () => {
  it('rounds for people, says so, and leaves the load alone', () => {
    expect(spaced(formatLoad(mixed, { unit: 'kg' }))).toBe('≈ 60.82 kg');
    expect(spaced(formatLoad(mixed, { unit: 'kg', maxDecimals: 1 }))).toBe('≈ 60.8 kg');
    expect(spaced(formatLoad(mixed, { unit: 'kg', maxDecimals: 7 }))).toBe('60.8233133 kg');
    expect(mixed).toBe(kg(60.8233133));
  });

  it('can leave the mark out', () => {
    const plain = { unit: 'kg', maxDecimals: 1, markRounded: false } as const;
    expect(spaced(formatLoad(mixed, plain))).toBe('60.8 kg');
  });

  it('writes in the marks of a locale', () => {
    expect(spaced(formatLoad(kg(62.5), { unit: 'kg', locale: 'de' }))).toBe('62,5 kg');
    expect(spaced(formatLoad(kg(62.5), { unit: 'kg', locale: 'fr' }))).toBe('62,5 kg');
    expect(spaced(formatLoad(lb(-35), { unit: 'lb', locale: 'sv' }))).toBe('−35 lb');
  });

  it('rounds the exact load and not its nearest float', () => {
    // As floats 1.005 and 8.575 lie a little below the half, 1.015 above.
    expect(spaced(formatLoad(kg(1.005), { unit: 'kg' }))).toBe('≈ 1.01 kg');
    expect(spaced(formatLoad(kg(8.575), { unit: 'kg' }))).toBe('≈ 8.58 kg');
    expect(spaced(formatLoad(kg(-1.015), { unit: 'kg' }))).toBe('≈ -1.02 kg');
  });

  it('keeps number and unit on one line', () => {
    expect(formatLoad(kg(20), { unit: 'kg' })).toBe('20\u00a0kg');
  });

  it('writes thousands without a mark', () => {
    expect(spaced(formatLoad(lb(1234.5), { unit: 'lb' }))).toBe('1234.5 lb');
  });

  it('refuses decimals that no load has', () => {
    expect(() => formatLoad(kg(1), { unit: 'kg', maxDecimals: 12 })).toThrow(RangeError);
    expect(() => formatLoad(kg(1), { unit: 'kg', maxDecimals: -1 })).toThrow(RangeError);
    expect(() => formatLoad(kg(1), { unit: 'kg', maxDecimals: 0.5 })).toThrow(RangeError);
  });
});
