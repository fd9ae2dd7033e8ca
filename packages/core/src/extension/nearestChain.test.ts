import { describe, expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import { chainParameters } from './chainParameters.ts';
import { benchPress, chinUp } from './exercises.testing.ts';
import { nearestChain } from './nearestChain.ts';
import type { ChainLimits, ChainSetting, HoldStage, Stage } from './Stage.ts';

const limits = limitsFor({
  ageYears: 35,
  bloodPressure: { status: 'not-raised' },
  loweringHeavyWork: 'accustomed',
});
const lift: Stage = { kind: 'lift' };
const hold = (at: HoldStage['at'], maxSeconds = 20): Stage => ({ kind: 'hold', at, maxSeconds });
const lower: Stage = { kind: 'lower', secondsEach: 5, maxLowerings: 3 };
const pause: Stage = { kind: 'pause', seconds: 15 };
const lighter: Stage = { kind: 'lighter', loadShare: 0.8 };

function nearest(asked: readonly Stage[], over: Partial<ChainSetting> = {}) {
  return nearestChain(asked, {
    ...{ exercise: chinUp, partner: true, stops: true, limits, switchedOn: true },
    ...over,
  });
}

function stages(...args: Parameters<typeof nearest>): readonly Stage[] {
  const answer = nearest(...args);
  if (answer.kind !== 'chain') throw new Error(answer.why);
  return answer.stages;
}

describe('which stages are kept', () => {
  it('as many as can be, the earlier of two that exclude each other', () => {
    expect(stages([lift, hold('middle'), hold('contracted'), lower])).toEqual([
      lift,
      hold('middle'),
      lower,
    ]);
  });

  it('in the order asked where that keeps as many as the order of strength', () => {
    expect(stages([lift, pause, lighter, hold('middle', 90)])).toEqual([
      lift,
      pause,
      lighter,
      hold('middle', 60),
    ]);
  });

  it('eight at most, and all of eight', () => {
    const eight = [lift, pause, pause, pause, pause, lighter, lighter, lighter];
    expect(stages([...eight, hold('middle')])).toEqual(eight);
    expect(stages(eight.with(1, { ...pause, seconds: 1 }))).toEqual(
      eight.with(1, { ...pause, seconds: 5 }),
    );
  });

  it('of the first eight only', () => {
    const holds = Array.from({ length: 7 }, () => hold('middle'));
    expect(stages([lift, ...holds, lower])).toEqual([lift, hold('middle')]);
    const hundred = Array.from({ length: 100 }, () => hold('middle'));
    expect(stages([lift, ...hundred])).toEqual([lift, hold('middle')]);
  });
});

describe('how stages are mended', () => {
  it.each<[Stage, Stage]>([
    [
      { kind: 'lighter', loadShare: 0.3 },
      { kind: 'lighter', loadShare: 0.5 },
    ],
    [
      { kind: 'lighter', loadShare: 0.99 },
      { kind: 'lighter', loadShare: 0.95 },
    ],
    [
      { kind: 'pause', seconds: 2 },
      { kind: 'pause', seconds: 5 },
    ],
    [
      { kind: 'pause', seconds: 90 },
      { kind: 'pause', seconds: 60 },
    ],
    [
      { kind: 'assisted', reps: 5 },
      { kind: 'assisted', reps: 2 },
    ],
    [
      { kind: 'part-range', maxReps: 40 },
      { kind: 'part-range', maxReps: 10 },
    ],
    [hold('middle', 300), hold('middle', 60)],
    [
      { kind: 'lower', secondsEach: 1, maxLowerings: 50 },
      { kind: 'lower', secondsEach: 3, maxLowerings: 10 },
    ],
  ])('%j becomes %j', (asked, mended) => {
    expect(stages([lift, asked])).toEqual([lift, mended]);
  });

  it('moves a hold before lowering from where the load is easy to where it is hardest', () => {
    // 40 % of the full effect while stretched, all of it in the middle
    expect(stages([lift, hold('stretched', 40), lower])).toEqual([lift, hold('middle', 40), lower]);
    expect(stages([lift, hold('contracted', 90), lower])).toEqual([
      lift,
      hold('contracted', 60),
      lower,
    ]);
  });

  it('leaves a hold where the load is just hard enough', () => {
    const momentArm = chainParameters.isometric.likely / chinUp.eccentricFactor;
    const holds = [{ at: 'stretched', momentArm }, ...chinUp.holds.slice(1)] as const;
    const exercise = { ...chinUp, holds };
    expect(stages([lift, hold('stretched', 90), lower], { exercise })).toEqual([
      lift,
      hold('stretched', 60),
      lower,
    ]);
  });
});

describe('no chain', () => {
  const reasons = [
    { from: 'one', words: 'Ask first.' },
    { from: 'two', words: 'Then wait.' },
  ];
  const training = (kind: 'refused' | 'off-by-default'): { readonly limits: ChainLimits } => ({
    limits: { ...limits, training: { kind, reasons } },
  });

  it('has no plan before somebody was asked, and says why', () => {
    const none = { kind: 'none', why: 'Ask first. Then wait.' };
    expect(nearest([lift], training('refused'))).toEqual(none);
    expect(nearest([lift], { ...training('off-by-default'), switchedOn: false })).toEqual(none);
    expect(stages([lift, hold('middle')], training('off-by-default'))).toEqual([
      lift,
      hold('middle'),
    ]);
  });

  it('stops two repetitions short, or more where more are asked for', () => {
    const alone = { exercise: benchPress, partner: false, stops: false };
    expect(nearest([lift], alone)).toMatchObject({ kind: 'stop-short', repsInReserve: 2 });
    const careful = { ...limits, repsInReserve: { atLeast: 4, firm: true, reasons } };
    expect(nearest([lift], { ...alone, limits: careful })).toMatchObject({ repsInReserve: 4 });
  });
});
