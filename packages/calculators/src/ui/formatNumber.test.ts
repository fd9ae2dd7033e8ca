import { describe, expect, it } from 'vitest';
import { formatNumber } from './formatNumber.ts';

describe('formatNumber', () => {
  it('drops what says nothing', () => {
    expect(formatNumber(100)).toBe('100');
    expect(formatNumber(62.5)).toBe('62.5');
    expect(formatNumber(1 / 3, 1)).toBe('0.3');
    expect(formatNumber(-0.001, 1)).toBe('0');
    expect(formatNumber(-12.5)).toBe('\u221212.5');
  });
});
