import { expect, it } from 'vitest';
import type { Load } from '../load/index.ts';
import { jumpGrows, offCost } from './rampCosts.ts';

it('counts how far a load is off in thousandths of the work load, squared', () => {
  expect(offCost(52 as Load, 50 as Load, 100 as Load)).toBe(400);
  expect(offCost(48 as Load, 50 as Load, 100 as Load)).toBe(400);
  expect(offCost(50 as Load, 50 as Load, 100 as Load)).toBe(0);
  // 0.5 thousandths are 1 up as down
  expect(offCost(2001 as Load, 2000 as Load, 2000 as Load)).toBe(1);
  expect(offCost(1999 as Load, 2000 as Load, 2000 as Load)).toBe(1);
});

it('calls a jump larger when it is so by more than a hundredth of the work load', () => {
  const grows = (next: number, before = 20) =>
    jumpGrows(before, 40 as Load, next as Load, 100 as Load);
  expect([60, 61, 62].map((next) => grows(next))).toEqual([false, false, true]);
  expect(grows(100, Number.NEGATIVE_INFINITY)).toBe(false);
});
