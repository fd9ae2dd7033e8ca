import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { rampStepCount, type StepCountQuestion } from './rampStepCount.ts';

const count = (workShare: number, rest: Partial<StepCountQuestion> = {}) =>
  rampStepCount({
    lightest: kg(20),
    work: kg(100),
    workShare,
    alreadyWarm: 0,
    technical: false,
    ...rest,
  });

describe('rampStepCount', () => {
  // From 20 to 100 kg: 1 + 2.6 ln 5 = 5.18. Demand rises from 0 at 55 % to 1 at 90 %.
  it.each([
    [0.5, 0],
    [0.55, 0],
    [0.59, 1], // 0.114 × 5.18 = 0.59
    [0.725, 3], // 0.5 × 5.18 = 2.59
    [0.9, 5],
    [1, 6], // 1.286, but 1.2 at most: 6.2
  ])('at %d of the one-rep max: %d', (share, steps) => {
    expect(count(share)).toBe(steps);
  });

  it('counts from 30 % of the work load where the lightest load is below 15 %', () => {
    // 1 + 2.6 ln (1 / 0.3) = 4.13, and from 15 % itself 1 + 2.6 ln (1 / 0.15) = 5.93
    expect(count(0.9, { lightest: kg(14) })).toBe(4);
    expect(count(0.9, { lightest: kg(15) })).toBe(6);
    // 1.2 × 5.93 = 7.1
    expect(count(1, { lightest: kg(15) })).toBe(7);
  });

  it('takes away the share of what is warm, and leaves one more step from 75 % on', () => {
    // 5 steps: 5 × 0.5 = 2.5 is 3, and one; 5 × 0.2 = 1, and one; never more than cold
    expect(count(0.9, { alreadyWarm: 0.5 })).toBe(4);
    expect(count(0.9, { alreadyWarm: 0.8 })).toBe(2);
    expect(count(0.9, { alreadyWarm: 1 })).toBe(1);
    expect(count(0.9, { alreadyWarm: 0.1 })).toBe(5);
    expect(count(0.75, { alreadyWarm: 1 })).toBe(1);
    expect(count(0.74, { alreadyWarm: 1 })).toBe(0);
    expect(count(0.9, { alreadyWarm: 1, technical: true })).toBe(5);
  });
});
