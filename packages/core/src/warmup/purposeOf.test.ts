import { expect, it } from 'vitest';
import { purposeOf } from './purposeOf.ts';

it.each([
  [0.01, 'circulation'],
  [0.5, 'circulation'],
  [0.51, 'rehearsal'],
  [0.84, 'rehearsal'],
  [0.85, 'primer'],
  [1.03, 'primer'],
])('a step at %d of the work load: %s', (share, purpose) => {
  expect(purposeOf(share)).toBe(purpose);
});
