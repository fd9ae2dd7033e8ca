import { expect, it } from 'vitest';
import { fewestFor } from './fewestFor.ts';

const one = (trains: string, score = 1) => ({ trains: [...trains], score });

it('takes of equals those that come first', () => {
  const [ab, c, a, bc] = [one('ab'), one('c'), one('a'), one('bc')] as const;
  // two and two: ab with c, and a with bc
  expect(fewestFor(['a', 'b', 'c'], [ab, c, a, bc])).toEqual([ab, c]);
  expect(fewestFor(['a', 'b', 'c'], [a, bc, ab, c])).toEqual([a, bc]);
  const again = one('a');
  expect(fewestFor(['a'], [a, again])[0]).toBe(a);
  const better = one('a', 2);
  expect(fewestFor(['a'], [a, better])[0]).toBe(better);
});

it('takes nothing for nothing, and where a wish is served by none', () => {
  expect(fewestFor<string, ReturnType<typeof one>>([], [one('a')])).toEqual([]);
  expect(fewestFor(['a'], [])).toEqual([]);
  expect(fewestFor(['a', 'b'], [one('a')])).toEqual([]);
  expect(fewestFor(['a'], [one('x', 9), one('a')])).toEqual([one('a')]);
});
