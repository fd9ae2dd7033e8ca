import { describe, expect, it } from 'vitest';
import { capacityKept, type WarmupState } from './capacityKept.ts';
import { rampSets } from './rampSets.ts';

const state = (kappa: number): WarmupState => ({
  muscles: { lift: 1 },
  start: {},
  curve: { kappa, alpha: 0.5, kappaLogSd: 0, sources: [] },
});
const plan = (shareOfMax: number, restSeconds = 60) => ({
  shareOfMax,
  restSeconds,
  secondsPerRep: 3,
});
/** Repetitions of steps for somebody whom they cost next to nothing. */
const mostReps = (...shares: readonly number[]) =>
  rampSets(
    shares.map((share) => plan(share)),
    [],
    state(1e6),
    0.97,
  ).sets.map(({ reps }) => reps);

// Half of the fast part of fatigue is back after this rest.
const HALF_TIME = Math.LN2 / 0.01365;

describe('rampSets', () => {
  it('gives the most repetitions of the rules where they cost nothing', () => {
    expect(mostReps(0.3)).toEqual([6]);
    expect(mostReps(0.3, 0.5, 0.7)).toEqual([8, 4, 2]);
    expect(mostReps(0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7)).toEqual([5, 4, 3, 2, 1, 1, 1]);
  });

  it('gives two at most from 75 % of the one-rep max and one from 85 %', () => {
    expect(mostReps(0.74, 0.74)).toEqual([8, 4]);
    expect(mostReps(0.75, 0.84)).toEqual([2, 2]);
    expect(mostReps(0.75, 0.85)).toEqual([2, 1]);
    expect(mostReps(0.3, 0.6, 0.7, 0.8)).toEqual([8, 5, 3, 1]);
  });

  // A repetition at 64 % costs 0.64^0.5 / 40 = 0.02, a fifth of it slow; after the half-time of
  // the fast part 0.012 of it is left. Six repetitions keep 0.928, five 0.94, four 0.952.
  it('cuts repetitions until the capacity is kept', () => {
    const { sets, enough } = rampSets([plan(0.64, HALF_TIME)], [], state(40), 0.95);
    expect(enough).toBe(true);
    expect(sets).toMatchObject([{ reps: 4, restSeconds: HALF_TIME }]);
  });

  it('is content with exactly what has to be kept', () => {
    const plans = [plan(0.64, HALF_TIME)];
    const { likely } = capacityKept([{ ...plan(0.64, HALF_TIME), reps: 6 }], state(40));
    expect(rampSets(plans, [], state(40), likely).sets[0]?.reps).toBe(6);
    expect(rampSets(plans, [], state(40), likely + 1e-9).sets[0]?.reps).toBe(5);
  });

  it('counts what follows the steps', () => {
    const after = [{ ...plan(0.64, HALF_TIME), reps: 2 }];
    // the two that follow keep 0.976 and get as little back from their own rest
    const { sets } = rampSets([plan(0.64, HALF_TIME)], after, state(40), 0.95);
    expect(sets[0]?.reps).toBeLessThan(4);
    expect(sets[0]?.reps).toBeGreaterThan(0);
  });

  it('lengthens the last rest by half minutes where single repetitions cost too much', () => {
    // one repetition keeps 0.988; with 30 s more 1 − 0.004 − 0.016 × 0.332 = 0.9907
    const { sets, enough } = rampSets([plan(0.1, 10), plan(0.64, HALF_TIME)], [], state(40), 0.985);
    expect(enough).toBe(true);
    expect(sets.map(({ reps }) => reps)).toEqual([1, 1]);
    expect(sets[0]?.restSeconds).toBe(10);
    const one = rampSets([plan(0.64, HALF_TIME)], [], state(40), 0.99);
    expect(one).toMatchObject({ enough: true, sets: [{ reps: 1, restSeconds: HALF_TIME + 30 }] });
  });

  it('gives up at five minutes of rest', () => {
    // the slow 0.004 of one repetition alone is too much; 60 + 8 × 30 = 300
    expect(rampSets([plan(0.64)], [], state(40), 0.997)).toMatchObject({
      enough: false,
      sets: [{ reps: 1, restSeconds: 300 }],
    });
  });
});
