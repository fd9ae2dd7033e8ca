import { expect, it } from 'vitest';
import { doWork } from './doWork.ts';

const tired = { fast: 0.2, slow: 0.1 };

it('rest brings back the fast part alone', () => {
  const rested = doWork(tired, { kind: 'rest', seconds: 20 }, 0.05);
  expect(rested.fast).toBeCloseTo(0.2 / Math.E, 12);
  expect(rested.slow).toBe(0.1);
});

it('repetitions cost what each costs, a fifth of it slow', () => {
  const work = { kind: 'reps', reps: 5, secondsPerRep: 4, costPerRep: 0.02 } as const;
  const done = doWork(tired, work, 0.05);
  expect(done.fast).toBeCloseTo(0.28, 12);
  expect(done.slow).toBeCloseTo(0.12, 12);
});

it('carrying a load counts all that is lost already, fast and slow', () => {
  const rates = { fatiguePerSecond: 0.01, recoveryPerSecond: 0.001 };
  const work = { kind: 'sustain', targetLoad: 0.5, seconds: 30, rates } as const;
  // towards 0.01 · 0.5 / 0.001 = 5, from 0.3
  const gained = (5 - 0.3) * -Math.expm1(-0.03);
  const done = doWork(tired, work, 0.05);
  expect(done.fast).toBeCloseTo(0.2 + 0.8 * gained, 12);
  expect(done.slow).toBeCloseTo(0.1 + 0.2 * gained, 12);
});
