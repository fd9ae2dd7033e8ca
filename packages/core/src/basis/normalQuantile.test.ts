import { expect, it } from 'vitest';
import { normalQuantile } from './normalQuantile.ts';

it('agrees with the printed table of the normal distribution', () => {
  // Abramowitz & Stegun, table 26.5
  expect(normalQuantile(0.5)).toBeCloseTo(0, 6);
  expect(normalQuantile(0.9)).toBeCloseTo(1.28155, 5);
  expect(normalQuantile(0.025)).toBeCloseTo(-1.95996, 5);
});
