import { expect, it } from 'vitest';
import { typedNumber } from './typedNumber.ts';

it.each([
  ['8', 8],
  ['2.5', 2.5],
  ['2,5', '2,5'],
  ['8.', '8.'],
  ['08', '08'],
  ['', ''],
  ['Infinity', 'Infinity'],
  ['x', 'x'],
] as const)('typedNumber("%s") is %j', (text, value) => {
  expect(typedNumber(text)).toBe(value);
});
