import { describe, expect, it } from 'vitest';
import { capacityFor } from './capacityFor.ts';
import { capacityTrace } from './capacityTrace.ts';
import { depositReps } from './depositReps.ts';
import { depositSustained } from './depositSustained.ts';
import { jointFatigueRates } from './jointFatigueRates.ts';
import { sustainedFatigue } from './sustainedFatigue.ts';
import { sustainedSeconds } from './sustainedSeconds.ts';

const shares = { biceps: 1 };
const tired = depositReps({}, shares, 10, 0.04);

describe('sustained work on a muscle that is tired', () => {
  it('takes the muscle where the law of sustained work says, from where it was', () => {
    const before = 1 - capacityFor(tired, shares);
    const work = { targetLoad: 0.5, seconds: 20 };
    const after = sustainedFatigue({ targetLoad: 0.5, fatigued: before }, 20);
    expect(before).toBeCloseTo(0.4, 12);
    expect(1 - capacityFor(depositSustained(tired, shares, work), shares)).toBeCloseTo(after, 12);
  });

  it('lets a muscle recover under a load that is lighter than it has got tired for', () => {
    const light = { targetLoad: 0, seconds: 60 };
    const rested = depositSustained(tired, shares, light);
    // Without a load fatigue decays: 0.4 e^(−60 × 0.00091), by hand.
    expect(1 - capacityFor(rested, shares)).toBeCloseTo(0.4 * Math.exp(-0.0546), 12);
    expect(rested.biceps?.slow).toBe(tired.biceps?.slow);
  });

  it('brings back no more than the part that comes back within a session', () => {
    const slowOnly = { biceps: { fast: 0, slow: 0.3 } };
    const rates = { fatiguePerSecond: 0.0097, recoveryPerSecond: 0.5 };
    const rested = depositSustained(slowOnly, shares, { targetLoad: 0, seconds: 3600, rates });
    expect(rested).toEqual(slowOnly);
  });
});

describe('a trace', () => {
  const hold = { kind: 'sustain', shares, targetLoad: 0.5, seconds: 7 } as const;
  const reps = { kind: 'reps', shares, reps: 5, secondsPerRep: 4, costPerRep: 0.04 } as const;

  it('has a point at least every two seconds where capacity bends, and none between straight reps', () => {
    const at = (steps: Parameters<typeof capacityTrace>[0]['steps']) =>
      capacityTrace({ shares, steps }).points.map(({ seconds }) => seconds);
    expect(at([hold])).toEqual([0, 1.75, 3.5, 5.25, 7]);
    expect(at([reps])).toEqual([0, 20]);
  });

  it('crosses the line that it starts on and leaves, none that it only reaches or stays above', () => {
    const end = capacityFor(depositReps({}, shares, 5, 0.04), shares);
    const lines = [
      { id: 'start', capacity: 1 },
      { id: 'end', capacity: end },
      { id: 'below', capacity: 0.1 },
      { id: 'middle', capacity: 0.9 },
    ];
    const crossed = capacityTrace({ shares, steps: [reps], lines }).crossings;
    expect(crossed.map(({ line }) => line)).toEqual(['start', 'middle']);
    // 5 reps of 0.04 in 20 s fall by 0.01 a second: 0.9 after 10 s. Halving stops at 0.1 ms.
    expect(Math.abs((crossed[1]?.seconds ?? 0) - 10)).toBeLessThan(2e-4);
  });
});

it('a share of 0 is no muscle of the exercise', () => {
  expect(depositReps({}, { biceps: 1, forearms: 0 }, 1, 0.04)).toEqual(
    depositReps({}, shares, 1, 0.04),
  );
});

it('rates of a joint are those that were published', () => {
  // Frey-Law 2012, Table 1: F and R of the knee, per second.
  expect(jointFatigueRates.knee).toMatchObject({
    fatiguePerSecond: 0.015,
    recoveryPerSecond: 0.001_49,
  });
});

it('a muscle that is tired to the end fails at once, also without a load', () => {
  expect(sustainedSeconds({ targetLoad: 0, fatigued: 1 })).toEqual({ kind: 'fails', seconds: 0 });
});
