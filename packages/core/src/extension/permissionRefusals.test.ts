import { describe, expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import { chinUp } from './exercises.testing.ts';
import { permissionRefusals } from './permissionRefusals.ts';
import type { ChainLimits, Stage } from './Stage.ts';

const reasons = [
  { from: 'one', words: 'This first.' },
  { from: 'two', words: 'And that.' },
];
const why = 'This first. And that.';
const free: ChainLimits = {
  ...limitsFor({}),
  repsInReserve: { atLeast: 0, firm: false, reasons: [] },
};
const chain: readonly Stage[] = [
  { kind: 'lift' },
  { kind: 'assisted', reps: 1 },
  { kind: 'hold', at: 'middle', maxSeconds: 20 },
  { kind: 'lower', secondsEach: 5, maxLowerings: 3 },
];

function refusals(limits: Partial<ChainLimits>, switchedOn = true, stages = chain) {
  return permissionRefusals(stages, {
    exercise: chinUp,
    partner: true,
    stops: true,
    limits: { ...free, ...limits },
    switchedOn,
  });
}

describe('permissionRefusals', () => {
  it('refuses nothing that is allowed', () => {
    expect(refusals({})).toEqual([]);
    expect(refusals({}, false)).toEqual([]);
  });

  it.each([
    ['training', 'no-training-yet', null],
    ['failureChains', 'no-chain', null],
    ['forcedReps', 'no-forced-reps', 1],
    ['longHolds', 'no-long-hold', 2],
  ] as const)('passes on every reason why there is no %s', (permission, code, stage) => {
    const refusal = { code: `extension.${code}`, stage, why, sources: [] };
    const refused = { [permission]: { kind: 'refused', reasons } };
    const off = { [permission]: { kind: 'off-by-default', reasons } };
    for (const on of [true, false]) {
      const found = refusals(refused, on);
      expect(found).toEqual([{ ...refusal, instead: expect.not.stringContaining('switch') }]);
      expect(found[0]?.instead).toMatch(/^\w.*\.$/);
    }
    expect(refusals(off, true)).toEqual([]);
    expect(refusals(off, false)).toEqual([
      { ...refusal, instead: expect.stringMatching(/\. The coach can switch it on\.$/) },
    ]);
  });

  it('asks for no leave to go past failure where nothing does', () => {
    const limits: Partial<ChainLimits> = { failureChains: { kind: 'refused', reasons } };
    expect(refusals(limits, true, [{ kind: 'lift' }])).toEqual([]);
    expect(refusals(limits, true, [])).toEqual([]);
  });

  it('stops short by as many repetitions as are asked for, unless the coach may set that aside', () => {
    const short = (atLeast: number, firm: boolean, switchedOn: boolean) =>
      refusals({ repsInReserve: { atLeast, firm, reasons } }, switchedOn);
    const refusal = {
      code: 'extension.not-to-failure',
      stage: null,
      why,
      instead: expect.stringContaining('2 or more'),

      sources: [],
    };
    expect(short(2, true, true)).toEqual([refusal]);
    expect(short(2, false, false)).toEqual([refusal]);
    expect(short(2, false, true)).toEqual([]);
    expect(short(0, true, true)).toEqual([]);
    expect(short(0, false, false)).toEqual([]);
  });

  it('counts the lowerings', () => {
    const lowerings = (count: number) => refusals({ hardLowerings: { count, reasons } });
    const refusal = {
      code: 'extension.too-many-lowerings',
      stage: 3,
      why,

      sources: [],
    };
    expect(lowerings(3)).toEqual([]);
    expect(lowerings(2)).toEqual([{ ...refusal, instead: expect.stringContaining(' 2 times') }]);
    expect(lowerings(0)).toEqual([{ ...refusal, instead: expect.stringMatching(/^Leave /) }]);
  });
});
