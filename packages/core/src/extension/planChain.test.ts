import { describe, expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import { benchPress, chinUp, deadHang, pulldown } from './exercises.testing.ts';
import { planChain } from './planChain.ts';
import type { ChainSetting, Stage } from './Stage.ts';

const lift: Stage = { kind: 'lift' };
const hold: Stage = { kind: 'hold', at: 'contracted', maxSeconds: 30 };
const lowerOnce: Stage = { kind: 'lower', secondsEach: 6, maxLowerings: 1 };
const lowerOften: Stage = { kind: 'lower', secondsEach: 5, maxLowerings: 5 };
const assisted: Stage = { kind: 'assisted', reps: 2 };

const adult = limitsFor(
  { ageYears: 35, bloodPressure: { status: 'not-raised' }, loweringHeavyWork: 'accustomed' },
  {},
);

function setting(over: Partial<ChainSetting> = {}): ChainSetting {
  return {
    exercise: chinUp,
    partner: false,
    stops: false,
    limits: adult,
    switchedOn: true,
    ...over,
  };
}

function codes(stages: readonly Stage[], over: Partial<ChainSetting> = {}): readonly string[] {
  const plan = planChain(stages, setting(over));
  return plan.kind === 'refused' ? plan.refusals.map((refusal) => refusal.code) : [];
}

describe('alone on a machine that can be left', () => {
  it('lifts, holds and lowers once', () => {
    expect(planChain([lift, hold, lowerOnce], setting({ exercise: pulldown }))).toEqual({
      kind: 'allowed',
      stages: [lift, hold, lowerOnce],
    });
  });

  it('does not lower before holding', () => {
    const plan = planChain([lift, lowerOnce, hold], setting({ exercise: pulldown }));
    expect(plan).toMatchObject({
      kind: 'refused',
      refusals: [
        {
          code: 'extension.wrong-order',
          stage: 2,
          why: expect.stringMatching(
            /^A hold cannot come right after slow lowering\. A muscle can/,
          ),
          instead: expect.stringContaining('lifting to failure; a lighter load without rest; '),
          sources: [{ id: 'past-failure-practice' }],
        },
      ],
      nearest: { kind: 'chain', stages: [lift, hold, lowerOnce] },
    });
  });

  it('does not lower again and again when only the tired muscles could bring the load up', () => {
    const plan = planChain([lift, hold, lowerOften], setting({ exercise: pulldown }));
    expect(plan).toMatchObject({
      kind: 'refused',
      refusals: [{ code: 'extension.no-way-back', stage: 2 }],
      nearest: {
        kind: 'chain',
        stages: [lift, hold, { kind: 'lower', secondsEach: 5, maxLowerings: 1 }],
      },
    });
  });

  it('does not lower at all from the bottom, where nothing brings it up', () => {
    const stretched: Stage = { kind: 'hold', at: 'stretched', maxSeconds: 10 };
    const plan = planChain([lift, stretched, lowerOnce], setting({ exercise: pulldown }));
    expect(plan).toMatchObject({
      refusals: [
        { code: 'extension.no-way-back', stage: 2, instead: expect.stringMatching(/^Hold higher/) },
      ],
    });
    expect(codes([lift, stretched, lowerOnce], { exercise: pulldown, partner: true })).toEqual([]);
  });

  it('does so where the legs bring it up', () => {
    expect(codes([lift, hold, lowerOften])).toEqual([]);
  });
});

describe('alone with a free bar above the body', () => {
  it('refuses help and lowerings, says why, and stops short', () => {
    const plan = planChain([lift, assisted, lowerOften], setting({ exercise: benchPress }));
    if (plan.kind !== 'refused') throw new Error('not refused');
    expect(plan.refusals.map(({ code }) => code)).toEqual([
      'extension.alone-under-load',
      'extension.no-partner',
      'extension.no-way-back',
    ]);
    expect(plan.refusals[0]?.why).toMatch(/^When the barbell bench press fails alone/);
    expect(plan.refusals[0]?.instead).toMatch(/pins.*empty bar.*dumbbells.*machine/);
    expect(plan.refusals[1]?.sources.map(({ id }) => id)).toEqual(['forced-rep-assistance']);
    expect(plan.nearest).toMatchObject({ kind: 'stop-short', repsInReserve: 2 });
  });

  it('refuses lifting to failure alone, too', () => {
    expect(codes([lift], { exercise: benchPress })).toEqual(['extension.alone-under-load']);
  });

  it('goes to failure between stops, and past it with a partner', () => {
    expect(codes([lift], { exercise: benchPress, stops: true })).toEqual([]);
    expect(codes([lift, assisted], { exercise: benchPress, partner: true })).toEqual([]);
    expect(codes([lift], { exercise: deadHang, stops: true })).toEqual([
      'extension.alone-without-partner',
    ]);
  });
});

describe('what the person may do', () => {
  it('treated high blood pressure: no hold, no chain, no failure', () => {
    const limits = limitsFor({
      ageYears: 62,
      bloodPressure: { status: 'treated', doctorAgrees: true, medicines: ['diuretic'] },
    });
    const plan = planChain([lift, hold], setting({ limits }));
    if (plan.kind !== 'refused') throw new Error('not refused');
    const found = plan.refusals.map(({ code }) => code);
    expect(found).toContain('extension.no-chain');
    expect(found).toContain('extension.no-long-hold');
    expect(found).toContain('extension.not-to-failure');
    expect(plan.nearest.kind).toBe('stop-short');
  });

  it('twelve years old: no chain, whoever switches it on', () => {
    const plan = planChain([lift, assisted], {
      ...setting({ limits: limitsFor({ ageYears: 12 }), partner: true }),
    });
    if (plan.kind !== 'refused') throw new Error('not refused');
    expect(plan.refusals.map(({ code }) => code)).toContain('extension.no-chain');
    expect(plan.refusals.map(({ code }) => code)).toContain('extension.no-forced-reps');
    expect(plan.nearest.kind).not.toBe('chain');
  });

  it('first time with lowerings: few of them', () => {
    const limits = limitsFor({ ageYears: 30 }, { loweringHeavy: true });
    const most = limits.hardLowerings?.count ?? 0;
    const asked: Stage = { kind: 'lower', secondsEach: 5, maxLowerings: most + 2 };
    const plan = planChain([lift, asked], setting({ limits }));
    expect(plan).toMatchObject({
      kind: 'refused',
      refusals: [{ code: 'extension.too-many-lowerings', stage: 1 }],
      nearest: { kind: 'chain', stages: [lift, { ...asked, maxLowerings: most }] },
    });
  });

  it('off by default until the coach switches it on', () => {
    const limits = limitsFor({ ageYears: 70, bloodPressure: { status: 'not-raised' } });
    expect(codes([lift, lowerOnce], { limits, switchedOn: false })).toContain('extension.no-chain');
    expect(codes([lift, lowerOnce], { limits, switchedOn: true })).toEqual([]);
  });

  it('no plan at all before somebody was asked', () => {
    const limits = limitsFor({
      bloodPressure: { status: 'untreated', reading: { systolic: 190, diastolic: 115 } },
    });
    const plan = planChain([lift], setting({ limits }));
    expect(plan).toMatchObject({ kind: 'refused', nearest: { kind: 'none' } });
  });
});

describe('order and amounts', () => {
  it('opens with lifting', () => {
    const plan = planChain([hold, lowerOnce], setting());
    expect(plan).toMatchObject({
      kind: 'refused',
      refusals: [{ code: 'extension.opens-with-lift', stage: 0 }],
      nearest: { kind: 'chain', stages: [lift, hold, lowerOnce] },
    });
  });

  it('refuses an empty chain and one that is too long', () => {
    expect(codes([])).toEqual(['extension.empty']);
    const long = [
      lift,
      ...Array.from({ length: 8 }, (): Stage => ({ kind: 'pause', seconds: 15 })),
    ];
    expect(codes(long)).toContain('extension.too-long');
    expect(codes(long)).toContain('extension.too-often');
    expect(codes(long.slice(0, 8))).not.toContain('extension.too-long');
  });

  it('names the first stage of a kind that is one too many', () => {
    const pause: Stage = { kind: 'pause', seconds: 15 };
    expect(planChain([lift, pause, pause, pause, pause, pause, pause], setting())).toMatchObject({
      refusals: [
        { code: 'extension.too-often', stage: 5, why: expect.stringMatching(/^At most 4 times/) },
      ],
    });
    const again = planChain([lift, hold, hold], setting());
    if (again.kind !== 'refused') throw new Error('not refused');
    expect(again.refusals.at(-1)).toMatchObject({
      code: 'extension.too-often',
      stage: 2,
      why: expect.stringMatching(/^At most once/),
    });
  });

  it('has no lifting after the last lowering', () => {
    expect(codes([lift, lowerOnce, { kind: 'lighter', loadShare: 0.8 }])).toEqual([
      'extension.wrong-order',
    ]);
  });

  it('does not hold for minutes where the load hardly turns', () => {
    const stretched: Stage = { kind: 'hold', at: 'stretched', maxSeconds: 40 };
    expect(planChain([lift, stretched, lowerOnce], setting())).toMatchObject({
      refusals: [
        { code: 'extension.hold-too-easy', stage: 1, why: expect.stringContaining(' 40 % ') },
      ],
    });
    expect(codes([lift, { ...stretched, maxSeconds: 10 }, lowerOnce])).toEqual([]);
    expect(codes([lift, stretched])).toEqual([]);
  });

  it('moves a hold that the exercise does not have', () => {
    const plan = planChain([lift, hold], setting({ exercise: benchPress, stops: true }));
    expect(plan).toMatchObject({
      kind: 'refused',
      refusals: [{ code: 'extension.hold-not-here', instead: 'Hold in the middle position.' }],
      nearest: { kind: 'chain', stages: [lift, { ...hold, at: 'middle' }] },
    });
  });

  it.each<[Stage, string, Stage]>([
    [
      { kind: 'lighter', loadShare: 0.4 },
      '0.5 to 0.95 of the load',
      { kind: 'lighter', loadShare: 0.5 },
    ],
    [
      { kind: 'lighter', loadShare: 0.99 },
      '0.5 to 0.95 of the load',
      { kind: 'lighter', loadShare: 0.95 },
    ],
    [{ kind: 'pause', seconds: 4 }, '5 to 60 seconds', { kind: 'pause', seconds: 5 }],
    [{ kind: 'pause', seconds: 61 }, '5 to 60 seconds', { kind: 'pause', seconds: 60 }],
    [{ kind: 'assisted', reps: 0 }, '1 to 2 repetitions', { kind: 'assisted', reps: 1 }],
    [{ kind: 'assisted', reps: 3 }, '1 to 2 repetitions', { kind: 'assisted', reps: 2 }],
    [{ kind: 'part-range', maxReps: 0 }, '1 to 10 repetitions', { kind: 'part-range', maxReps: 1 }],
    [
      { kind: 'part-range', maxReps: 11 },
      '1 to 10 repetitions',
      { kind: 'part-range', maxReps: 10 },
    ],
    [{ ...hold, maxSeconds: 2 }, '3 to 60 seconds', { ...hold, maxSeconds: 3 }],
    [{ ...hold, maxSeconds: 61 }, '3 to 60 seconds', { ...hold, maxSeconds: 60 }],
    [
      { ...lowerOften, secondsEach: 2 },
      '3 to 15 seconds for each',
      { ...lowerOften, secondsEach: 3 },
    ],
    [
      { ...lowerOften, secondsEach: 16 },
      '3 to 15 seconds for each',
      { ...lowerOften, secondsEach: 15 },
    ],
    [{ ...lowerOften, maxLowerings: 0 }, '1 to 10 lowerings', { ...lowerOften, maxLowerings: 1 }],
    [{ ...lowerOften, maxLowerings: 11 }, '1 to 10 lowerings', { ...lowerOften, maxLowerings: 10 }],
  ])('refuses the amount in %j, asks for %s, and takes the nearest', (stage, range, mended) => {
    const source = stage.kind === 'assisted' ? 'forced-rep-assistance' : 'past-failure-practice';
    expect(planChain([lift, stage], setting({ partner: true }))).toMatchObject({
      refusals: [
        {
          code: 'extension.amount',
          stage: 1,
          instead: expect.stringContaining(`Ask for ${range}`),
          sources: [{ id: source }],
        },
      ],
      nearest: { kind: 'chain', stages: [lift, mended] },
    });
    expect(codes([lift, mended], { partner: true })).toEqual([]);
  });
});
