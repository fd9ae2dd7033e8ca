import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ChainDraw } from './ChainDraw.ts';
import { doWork } from './doWork.ts';
import { drawChain } from './drawChain.ts';
import { chinUp, pulldown } from './exercises.testing.ts';
import { runChain } from './runChain.ts';
import type { Stage } from './Stage.ts';

const fresh = { fast: 0, slow: 0 };
const exercise = {
  holds: [
    { at: 'stretched', momentArm: 0.5 },
    { at: 'middle', momentArm: 1 },
  ],
  wayBack: 'step-up',
  eccentricFactor: 1.25,
} as const;
const setup = { exercise, secondsPerRep: 4 };
/** A repetition costs 0.8 / 40 = 0.02; holding asks for 0.64 and lowering for 0.5 of strength. */
const draw: ChainDraw = {
  kappa: 40,
  alpha: 1,
  intensity: 0.8,
  isometric: 1.25,
  eccentric: 1.6,
  partRange: 1.25,
  rates: { fatiguePerSecond: 0.01, recoveryPerSecond: 0.001 },
  loweringRates: { fatiguePerSecond: 0.02, recoveryPerSecond: 0.001 },
  restPerSecond: 0.01,
};
const lift: Stage = { kind: 'lift' };
const lower = (secondsEach: number, maxLowerings: number): Stage => ({
  kind: 'lower',
  secondsEach,
  maxLowerings,
});

function last(stages: readonly Stage[], over: Partial<ChainDraw> = {}, start = fresh) {
  const run = runChain(stages, start, { ...draw, ...over }, setup).at(-1);
  if (run === undefined) throw new Error('no stage');
  return { ...run, kinds: run.work.map(({ kind }) => kind) };
}

describe('lifting', () => {
  it('is 11 repetitions: 1 + (1 − 0.8) / 0.02', () => {
    // 11 × 0.02 = 0.22, a fifth of it slow
    expect(last([lift])).toMatchObject({
      count: 11,
      secondsUnderLoad: 44,
      kinds: ['reps'],
      fatigue: { fast: expect.closeTo(0.176, 12), slow: expect.closeTo(0.044, 12) },
    });
  });

  it('goes on after a pause with what that brings back of the fast part', () => {
    // 1 − 0.176 · e^−0.2 − 0.044 = 0.8119: 1 + 0.0119 / 0.02 = 1.6
    const paused = last([lift, { kind: 'pause', seconds: 20 }]);
    expect(paused).toMatchObject({ count: 1, secondsUnderLoad: 4, kinds: ['rest', 'reps'] });
    expect(paused.work[0]).toEqual({ kind: 'rest', seconds: 20 });
    expect(paused.fatigue.fast).toBeCloseTo(0.176 * Math.exp(-0.2) + 0.8 * 0.02, 12);
  });

  it('goes on after 5 s with less load, which stays off', () => {
    // 1 − 0.176 · e^−0.05 − 0.044 = 0.78858; 0.6 costs 0.015: 1 + 0.18858 / 0.015 = 13.6
    const lighter: Stage = { kind: 'lighter', loadShare: 0.75 };
    const once = last([lift, lighter]);
    expect(once).toMatchObject({ count: 13, secondsUnderLoad: 52, kinds: ['rest', 'reps'] });
    expect(once.work[0]).toEqual({ kind: 'rest', seconds: 5 });
    // 0.6 / 1.25
    const hold: Stage = { kind: 'hold', at: 'middle', maxSeconds: 5 };
    expect(last([lift, lighter, hold]).work).toMatchObject([
      { targetLoad: expect.closeTo(0.48, 12) },
    ]);
    // 0.6 · 0.75 / 1.25
    expect(last([lift, lighter, lighter, hold]).work[0]).toMatchObject({
      targetLoad: expect.closeTo(0.36, 12),
    });
  });

  it('does half the range in half the time at half the cost', () => {
    // 0.8 / 1.25 = 0.64: 1 + (0.78 − 0.64) / 0.01 = 15
    const part = last([lift, { kind: 'part-range', maxReps: 20 }]);
    expect(part).toMatchObject({ count: 15, secondsUnderLoad: 30, kinds: ['reps'] });
    expect(part.fatigue.fast + part.fatigue.slow).toBeCloseTo(0.22 + 0.15, 12);
    expect(last([lift, { kind: 'part-range', maxReps: 4 }])).toMatchObject({ count: 4 });
  });

  it('does with help what was asked', () => {
    const helped = last([lift, { kind: 'assisted', reps: 2 }]);
    expect(helped).toMatchObject({ count: 2, secondsUnderLoad: 8, kinds: ['reps'] });
    expect(helped.fatigue.fast + helped.fatigue.slow).toBeCloseTo(0.22 + 0.04, 12);
  });
});

describe('holding', () => {
  it('lasts until as much strength is left as the load asks for in that position', () => {
    const hold = (at: 'stretched' | 'middle', maxSeconds: number): readonly Stage[] => [
      lift,
      { kind: 'hold', at, maxSeconds },
    ];
    // 0.8 · 0.5 / 1.25 = 0.32, of 0.78: −ln(1 − R · 0.46 / (F · 0.32 − R · 0.22)) / R
    const seconds = -1000 * Math.log(1 - 0.000_46 / (0.0032 - 0.000_22));
    const long = last(hold('stretched', 300));
    expect(long.kinds).toEqual(['sustain']);
    expect(long.secondsUnderLoad).toBeCloseTo(seconds, 6);
    expect(long.count).toBe(long.secondsUnderLoad);
    expect(1 - long.fatigue.fast - long.fatigue.slow).toBeCloseTo(0.32, 9);
    expect(last(hold('stretched', 60))).toMatchObject({ count: 60, secondsUnderLoad: 60 });
    // 0.64 of 0.78
    const hard = -1000 * Math.log(1 - 0.000_14 / (0.0064 - 0.000_22));
    expect(last(hold('middle', 300)).secondsUnderLoad).toBeCloseTo(hard, 6);
  });
});

describe('lowering', () => {
  const held = (at: 'stretched' | 'middle'): Stage => ({ kind: 'hold', at, maxSeconds: 0 });
  /** So light that there is no end. */
  const light = { intensity: 0.01 };

  it('brings the load back up before each, and not after the last', () => {
    const often = last([lift, lower(5, 3)], light);
    expect(often).toMatchObject({ count: 3, secondsUnderLoad: 15 });
    expect(often.kinds).toEqual(['rest', 'sustain', 'rest', 'sustain', 'rest', 'sustain']);
    expect(often.work[0]).toEqual({ kind: 'rest', seconds: 4 });
  });

  it('begins where a hold has left the load, unless that was at the bottom', () => {
    expect(last([held('middle'), lower(5, 2)], light).kinds).toEqual([
      'sustain',
      'rest',
      'sustain',
    ]);
    expect(last([held('stretched'), lower(5, 2)], light).kinds[0]).toBe('rest');
  });

  it('lowers once from wherever the load is', () => {
    for (const before of [lift, held('middle'), held('stretched')]) {
      expect(last([before, lower(5, 1)], light)).toMatchObject({ count: 1, kinds: ['sustain'] });
    }
  });

  // −ln(1 − R · 0.5 / (F · 0.5)) / R: strength for 51.3 s of lowering 0.5, from fresh
  const left = -1000 * Math.log1p(-0.0005 / 0.01);

  it('counts a lowering that strength lasts for to the end', () => {
    expect(last([held('middle'), lower(left, 1)])).toMatchObject({
      count: 1,
      secondsUnderLoad: left,
    });
    const half = last([held('middle'), lower(60, 3)]);
    expect(half).toMatchObject({ count: 0, kinds: ['sustain'] });
    expect(half.secondsUnderLoad).toBeCloseTo(left, 9);
  });

  it('ends with the one that strength does not last for, and times that', () => {
    // 10 · (1 − e^−0.04) is lost in 40 s; 4 s bring back a part of the fast four fifths
    const lost = 10 * -Math.expm1(-0.04);
    const rested = lost * (0.2 + 0.8 * Math.exp(-0.04));
    const second = -1000 * Math.log1p((-0.001 * (0.5 - rested)) / (0.01 - 0.001 * rested));
    const run = last([held('middle'), lower(40, 3)]);
    expect(run).toMatchObject({ count: 1, kinds: ['sustain', 'rest', 'sustain'] });
    expect(run.secondsUnderLoad).toBeCloseTo(40 + second, 6);
  });

  it('does not begin when nothing is left', () => {
    const none = { count: 0, secondsUnderLoad: 0, work: [] };
    expect(last([lower(5, 1)], {}, { fast: 0.4, slow: 0.1 })).toMatchObject(none);
  });
});

const stage: fc.Arbitrary<Stage> = fc.oneof(
  fc.constant(lift),
  fc.record({ kind: fc.constant('part-range' as const), maxReps: fc.integer({ min: 1, max: 10 }) }),
  fc.record({ kind: fc.constant('lighter' as const), loadShare: fc.constantFrom(0.5, 0.8, 0.95) }),
  fc.record({ kind: fc.constant('pause' as const), seconds: fc.integer({ min: 5, max: 60 }) }),
  fc.record({ kind: fc.constant('assisted' as const), reps: fc.integer({ min: 1, max: 2 }) }),
  fc.record({
    kind: fc.constant('hold' as const),
    at: fc.constantFrom('stretched' as const, 'middle' as const),
    maxSeconds: fc.integer({ min: 3, max: 60 }),
  }),
  fc.record({
    kind: fc.constant('lower' as const),
    secondsEach: fc.integer({ min: 3, max: 15 }),
    maxLowerings: fc.integer({ min: 1, max: 10 }),
  }),
);

it('what was done, done again piece by piece, takes as long and tires as much', () => {
  const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
  const point = fc.array(share, { minLength: 9, maxLength: 9 });
  const input = fc.record({
    exercise: fc.constantFrom(chinUp, pulldown),
    intensity: fc.double({ min: 0.3, max: 1, noNaN: true }),
    secondsPerRep: fc.integer({ min: 2, max: 12 }),
  });
  fc.assert(
    fc.property(fc.array(stage, { maxLength: 6 }), input, point, (stages, who, at) => {
      const lifter = drawChain({ ...who, stages, seed: 0 }, at);
      let fatigue = fresh;
      for (const run of runChain(stages, fresh, lifter, who)) {
        let seconds = 0;
        for (const piece of run.work) {
          fatigue = doWork(fatigue, piece, lifter.restPerSecond);
          if (piece.kind === 'reps') seconds += piece.reps * piece.secondsPerRep;
          if (piece.kind === 'sustain') seconds += piece.seconds;
        }
        expect(run.fatigue).toEqual(fatigue);
        expect(run.secondsUnderLoad).toBeCloseTo(seconds, 9);
      }
    }),
  );
});
