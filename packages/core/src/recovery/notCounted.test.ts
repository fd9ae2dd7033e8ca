import { expect, it } from 'vitest';
import { notCounted } from './notCounted.ts';

it('names a verified source for everything that is left out', () => {
  expect(notCounted.map(({ factor }) => factor)).toEqual([
    'age',
    'protein-synthesis',
    'protein-intake',
  ]);
  for (const { sources } of notCounted) {
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.every(({ standing }) => standing === 'verified')).toBe(true);
  }
});
