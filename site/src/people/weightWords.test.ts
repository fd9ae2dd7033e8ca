import { expect, it } from 'vitest';
import { weightWords } from './weightWords.ts';

it.each([
  ['71,5 kg', '71.5 kg'],
  ['157.5 lb', '157.5 lb'],
  ['84kg', '84 kg'],
  ['', ''],
  ['heavy', 'heavy'],
])('writes %j as %j', (typed, words) => {
  expect(weightWords(typed)).toBe(words);
});
