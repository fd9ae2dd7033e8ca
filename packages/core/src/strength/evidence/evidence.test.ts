import { describe, expect, it } from 'vitest';
import { kg } from '../../load/index.ts';
import type { PerformedSet, SetEnd } from '../PerformedSet.ts';
import { bindingOf } from './bindingOf.ts';
import { countBand } from './countBand.ts';
import { failureReps } from './failureReps.ts';
import { paceDoubt } from './paceDoubt.ts';
import { driftOver } from './passDays.ts';
import { scatterScale } from './scatterScale.ts';
import { sessionsOf } from './sessionsOf.ts';
import { setLikelihood } from './setLikelihood.ts';
import { surpriseOf } from './surpriseOf.ts';

const set = (reps: number, end: SetEnd = { kind: 'failure' }, day = 0): PerformedSet => ({
  load: kg(50),
  reps,
  end,
  day,
});

describe('setLikelihood', () => {
  it('shares 1 among all counts, none done among them', () => {
    for (const [mean, spread] of [
      [6, 0.8],
      [0.3, 0.6],
      [20, 3],
    ] as const) {
      let sum = 0;
      for (let reps = 0; reps < 80; reps += 1) sum += setLikelihood(set(reps), false)(mean, spread);
      expect(sum).toBeCloseTo(1, 6);
    }
  });

  it('reads a stop at the target as everything beyond', () => {
    // half a repetition over 8 + 1 - 0.5 at spread 1: a normal below 0.5
    const chance = setLikelihood(set(8, { kind: 'more', atLeast: 1 }), false)(9, 1);
    expect(chance).toBeCloseTo(0.691462, 5);
  });

  it('never rules a set out when slips are taken in', () => {
    const far = setLikelihood(set(5), true)(60, 1);
    expect(far).toBeCloseTo(0.005 / 60, 6);
    expect(setLikelihood(set(5), false)(60, 1)).toBeLessThan(1e-100);
  });

  it('is the normal share of the half repetitions around a count, on either side of the mean', () => {
    // a normal between 0.5 and 1.5 and between -1.5 and -0.5, and around 0
    const near = (reps: number, mean: number) => setLikelihood(set(reps), false)(mean, 1);
    expect(near(9, 8)).toBeCloseTo(0.241_73, 6);
    expect(near(7, 8)).toBeCloseTo(0.241_73, 6);
    expect(near(8, 8)).toBeCloseTo(0.382_925, 6);
    // far out the tail keeps its digits: 7.5 to 8.5 above
    expect(near(16, 8)).toBeGreaterThan(3e-14);
    expect(near(16, 8)).toBeLessThan(3.3e-14);
    // and 11.5 to 12.5, above as below: a normal beyond 11.5 is 6.6e-31
    for (const far of [near(20, 8), near(8, 20)]) expect(far / 6.6e-31).toBeCloseTo(1, 1);
  });

  it('takes a failed first repetition as everything below one half', () => {
    // a mean of 0.2: a normal below 0.3
    expect(setLikelihood(set(0), false)(0.2, 1)).toBeCloseTo(0.617_911, 5);
  });

  it('reads what was left as a measurement of the count, with the doubt of such readings', () => {
    // 8 + 2 + 0.95 = 10.95 in doubt by 0.7 + 0.5; with a spread of 0.9 that is 1.5: density at 1.95 / 1.5
    const end: SetEnd = { kind: 'reserve', repsLeft: 2 };
    expect(setLikelihood(set(8, end), false)(9, 0.9)).toBeCloseTo(0.171_369 / 1.5, 5);
  });

  it('mixes in slips: 4.5 % four times as wide, half a percent of anything', () => {
    // even odds for a floor at the mean, whatever the width
    const more: SetEnd = { kind: 'more', atLeast: 1 };
    expect(setLikelihood(set(8, more), true)(8.5, 1)).toBeCloseTo(0.5, 6);
    // far below the floor: only the wide share and the half percent are left
    const wide = 0.045 * 0.022_75;
    expect(setLikelihood(set(8, more), true)(0.5, 1)).toBeCloseTo(wide + 0.0025, 6);
    const exact = 0.95 * 0.382_925 + 0.045 * 0.099_476 + 0.005 / 60;
    expect(setLikelihood(set(8), true)(8, 1)).toBeCloseTo(exact, 5);
    expect(setLikelihood(set(0), true)(60, 1)).toBeCloseTo(0.005 / 60, 9);
    const end: SetEnd = { kind: 'reserve', repsLeft: 0 };
    expect(setLikelihood(set(8, end), true)(60, 1)).toBeCloseTo(0.005 / 60, 9);
  });
});

describe('failureReps', () => {
  it('adds the 0.95 that people leave out, with doubt that grows', () => {
    expect(failureReps(8, 3)).toEqual({ reps: 11.95, doubt: 0.7 + 0.75 });
    // 10 + 4 + 0.95 is 2.95 above 12
    expect(failureReps(10, 4).doubt).toBeCloseTo(0.7 + 1 + 0.15 * 2.95, 12);
  });

  it('doubts long sets more from the thirteenth repetition on', () => {
    // 10 + 1.05 + 0.95 is 12
    expect(failureReps(10, 1.05).doubt).toBeCloseTo(0.7 + 0.25 * 1.05, 12);
    expect(failureReps(11, 1.05).doubt).toBeCloseTo(0.7 + 0.25 * 1.05 + 0.15, 12);
  });
});

describe('paceDoubt', () => {
  it('has none at the reference pace and much outside 2 to 10 seconds', () => {
    expect(paceDoubt(3)).toEqual({ factor: 1, kappaSd: 0, loadSd: 0 });
    expect(paceDoubt(12).kappaSd).toBeGreaterThan(0.6);
    expect(paceDoubt(6).kappaSd).toBeCloseTo(0.12 * Math.log(2), 12);
    expect(paceDoubt(30).loadSd).toBe(0.07);
  });

  it('trusts the law from 2 to 10 seconds, both included', () => {
    for (const seconds of [2, 10]) {
      const { kappaSd, loadSd, factor } = paceDoubt(seconds);
      expect(kappaSd).toBeCloseTo(0.12 * Math.abs(Math.log(seconds / 3)), 12);
      expect(loadSd).toBeCloseTo(0.01 * Math.abs(seconds - 3), 12);
      expect(factor).toBeCloseTo((seconds / 3) ** -0.55, 12);
    }
    for (const seconds of [1.9, 10.1]) {
      const { kappaSd } = paceDoubt(seconds);
      expect(kappaSd).toBeCloseTo(Math.hypot(0.6, 0.12 * Math.log(seconds / 3)), 12);
    }
    expect(paceDoubt(undefined)).toEqual({ factor: 1, kappaSd: 0.22, loadSd: 0.03 });
  });
});

describe('driftOver', () => {
  it('loses nothing in two weeks and more the longer a layoff lasts', () => {
    expect(driftOver({ days: 14, trained: false }).loss).toBe(0);
    const losses = [14, 15, 42, 70, 210, 400].map(
      (days) => driftOver({ days, trained: false }).loss,
    );
    expect(losses).toEqual([...losses].sort((a, b) => a - b));
    // 0.35 * (1 - exp(-28 / 100)) and 0.35 * (1 - exp(-196 / 100))
    expect(losses[2]).toBeCloseTo(0.0855, 4);
    expect(losses[4]).toBeCloseTo(0.3007, 4);
  });

  it('loses nothing over a break that was trained through, and is in doubt all the same', () => {
    const drift = driftOver({ days: 100, trained: true });
    expect(drift.loss).toBe(0);
    // 100 days of 2e-4
    expect(drift.maxSd).toBeCloseTo(Math.sqrt(0.02), 12);
    // untrained, strength wanders for the two weeks without loss, and half of the loss is in doubt
    const idle = driftOver({ days: 100, trained: false });
    expect(idle.maxSd).toBeCloseTo(Math.hypot(Math.sqrt(0.0028), 0.5 * idle.loss), 12);
  });

  it('adds no more doubt of endurance after half a year', () => {
    expect(driftOver({ days: 180, trained: true }).kappaSd).toBe(
      driftOver({ days: 900, trained: true }).kappaSd,
    );
  });
});

describe('sessionsOf', () => {
  it('puts sets of a whole day together, earliest day first', () => {
    const sessions = sessionsOf([
      set(5, undefined, 9.9),
      set(6, undefined, 2),
      set(7, undefined, 9.1),
    ]);
    expect(sessions.map(({ day, sets }) => [day, sets.map(({ reps }) => reps)])).toEqual([
      [2, [6]],
      [9, [5, 7]],
    ]);
  });
});

describe('bindingOf', () => {
  it('keeps what was bound and adds the other side', () => {
    const more: SetEnd = { kind: 'more', atLeast: 1 };
    expect(bindingOf([], 'prior-only')).toBe('prior-only');
    expect(bindingOf([set(8, more)], 'prior-only')).toBe('floor-only');
    expect(bindingOf([set(0)], 'prior-only')).toBe('ceiling-only');
    expect(bindingOf([set(0)], 'floor-only')).toBe('both-sides');
    expect(bindingOf([set(1)], 'prior-only')).toBe('both-sides');
    expect(bindingOf([], 'both-sides')).toBe('both-sides');
    expect(bindingOf([set(5, { kind: 'reserve', repsLeft: 2 })], 'prior-only')).toBe('both-sides');
  });

  it('stays one-sided while nothing binds the other side', () => {
    expect(bindingOf([], 'ceiling-only')).toBe('ceiling-only');
    expect(bindingOf([], 'floor-only')).toBe('floor-only');
    expect(bindingOf([set(0)], 'ceiling-only')).toBe('ceiling-only');
    expect(bindingOf([set(8, { kind: 'more', atLeast: 1 })], 'floor-only')).toBe('floor-only');
    // nothing done, and more was possible: a floor
    expect(bindingOf([set(0, { kind: 'more', atLeast: 1 })], 'prior-only')).toBe('floor-only');
  });
});

describe('surpriseOf', () => {
  const chances = [0, 0.1, 0.2, 0.4, 0.2, 0.1];

  it('is the probability of an outcome as far out, both sides together', () => {
    expect(surpriseOf(set(5), chances)).toBeCloseTo(0.2, 12);
    expect(surpriseOf(set(2), chances)).toBeCloseTo(0.6, 12);
    expect(surpriseOf(set(3), chances)).toBe(1);
    expect(surpriseOf(set(2, { kind: 'more', atLeast: 2 }), chances)).toBeCloseTo(0.3, 12);
  });

  it('compares a reading of what was left with the mean, by both doubts together', () => {
    // mean 3, variance 0.5; 1 + 2 + 0.95 = 3.95 in doubt by 0.7 + 2 * 0.25: 0.95 / 1.39284 = 0.68206
    const even = [0, 0, 0.25, 0.5, 0.25];
    const end: SetEnd = { kind: 'reserve', repsLeft: 2 };
    expect(surpriseOf(set(1, end), even)).toBeCloseTo(0.4952, 4);
    // 1 + 0 + 0.95 lies 1.05 below: over hypot(0.7071, 0.7) = 0.99499 that is 1.05529
    expect(surpriseOf(set(1, { kind: 'reserve', repsLeft: 0 }), even)).toBeCloseTo(0.2913, 4);
  });

  it('is 1 where as much lies beyond on either side', () => {
    expect(surpriseOf(set(1), [0.2, 0.6, 0.2])).toBe(1);
  });
});

describe('countBand', () => {
  it('holds at least its level in whole counts', () => {
    expect(countBand([0, 0.1, 0.2, 0.4, 0.2, 0.1], 0.8)).toEqual({
      low: 1,
      likely: 3,
      high: 4,
      level: 0.8,
    });
    expect(countBand([1], 0.8)).toEqual({ low: 0, likely: 0, high: 0, level: 0.8 });
  });
});

describe('scatterScale', () => {
  it('lets a change of strength move counts alike in every row within a factor of e', () => {
    const axis = { from: 0, step: 1, count: 1 };
    const rows = { from: Math.log(20), step: Math.log(4), count: 2 };
    // even odds of 20 and 80: the likely kappa is their geometric mean, 40
    const scale = scatterScale({ columns: axis, rows, logs: new Float64Array(2) });
    for (const kappa of [20, 40, 80]) expect(kappa * scale(Math.log(kappa))).toBeCloseTo(40, 12);
    expect(scale(Math.log(4))).toBeCloseTo(Math.E, 12);
    expect(scale(Math.log(400))).toBeCloseTo(1 / Math.E, 12);
  });
});
