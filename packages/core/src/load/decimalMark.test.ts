import { expect, it } from 'vitest';
import { decimalMark } from './decimalMark.ts';

it.each([
  ['en', '.'],
  ['de', ','],
  ['fr', ','],
  ['sv', ','],
  ['de-CH', '.'],
  // Digits that loads are written in here, with the mark that goes with them (Unicode CLDR, latn).
  ['ar-EG', '.'],
])('the decimal mark of %s is %s', (locale, mark) => {
  expect(decimalMark(locale)).toBe(mark);
});

it('refuses what is no language tag', () => {
  expect(() => decimalMark('not a tag')).toThrow(RangeError);
});
