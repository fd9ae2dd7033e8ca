import { expect, it } from 'vitest';
import { chainThresholds, type ThresholdInput } from './chainThresholds.ts';

const input = { intensity: 0.75, isometric: 1.2, eccentric: 1.5 };

it('asks less to hold where the load turns less', () => {
  expect(chainThresholds(input)).toEqual({ lift: 0.75, hold: 0.625, lower: 0.5 });
  // 0.75 · 0.4 / 1.2
  expect(chainThresholds({ ...input, momentArm: 0.4 }).hold).toBeCloseTo(0.25, 12);
});

it.each<[keyof ThresholdInput, number, number]>([
  ['intensity', 0, -0.1],
  ['isometric', 1, 0.9],
  ['eccentric', 1, 0.9],
  ['momentArm', 0.001, 0],
])('refuses %s out of range by name', (name, least, wrong) => {
  expect(() => chainThresholds({ ...input, [name]: least })).not.toThrow();
  for (const value of [wrong, Number.NaN]) {
    expect(() => chainThresholds({ ...input, [name]: value })).toThrow(
      new RegExp(`^chainThresholds: ${name} must be`),
    );
  }
});
