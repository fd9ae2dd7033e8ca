import { expect, it } from 'vitest';
import { inDecimals } from './inDecimals.ts';

it('a number in a sentence keeps the decimals that are asked for', () => {
  expect(inDecimals(2.5, 1)).toBe('2.5');
  expect(inDecimals(10, 1)).toBe('10.0');
  expect(inDecimals(6.66, 0)).toBe('7');
  expect(inDecimals(-0.25, 2)).toBe('-0.25');
});
