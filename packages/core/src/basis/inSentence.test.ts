import { expect, it } from 'vitest';
import { inSentence } from './inSentence.ts';

it('a name starts small in the middle of an English sentence, and stays as it is otherwise', () => {
  expect(inSentence('Leg press')).toBe('leg press');
  expect(inSentence('T-bar row')).toBe('t-bar row');
  expect(inSentence('')).toBe('');
});
