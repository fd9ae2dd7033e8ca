import { expect, it } from 'vitest';
import { normalQuantile } from './normalQuantile.ts';

it.each([
  // Standard normal table.
  [0.5, 0],
  [0.9, 1.281_551_565_5],
  [0.975, 1.959_963_984_5],
  [0.995, 2.575_829_303_5],
  [0.001, -3.090_232_306_2],
  [0.01, -2.326_347_874],
])('the normal deviate of %d', (share, deviate) => {
  expect(normalQuantile(share)).toBeCloseTo(deviate, 7);
});
