import { describe, expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import { allowedChain } from './allowedChain.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import type { Client } from './Client.ts';
import type { ChainIntent, LiftIntent } from './Intent.ts';
import { liftOf } from './liftOf.ts';
import type { LiftQuestion } from './planLift.ts';

const hold = { kind: 'hold', at: 'middle', maxSeconds: 20 } as const;
const lower = { kind: 'lower', secondsEach: 6, maxLowerings: 1 } as const;
const bench = { exercise: 'barbell-bench-press', equipment: 'short-bar' };
const over65: Client = { ...client, health: { ...client.health, ageYears: 70 } };

function answer(
  chain: ChainIntent | undefined,
  {
    who = client,
    skipChain = false,
    ...place
  }: Partial<LiftIntent> & {
    readonly who?: Client;
    readonly skipChain?: boolean;
  } = {},
) {
  const lift = liftOf({ ...pulldown, ...place, ...(chain && { chain }) }, gym, who.bodyWeight);
  if (lift.kind !== 'lift') throw new Error(lift.message);
  const limits = limitsFor(who.health, {
    intensity: 'vigorous',
    alone: who.alone,
    date: '2027-03-15',
  });
  const question: LiftQuestion = {
    lift,
    overruled: {},
    refused: [],
    skipSteps: 0,
    skipChain,
    client: who,
    gym,
    date: '2027-03-15',
    limits,
    start: { own: {}, carried: {} },
    warm: new Set(),
  };
  return allowedChain(question);
}

const codes = (...args: Parameters<typeof answer>) =>
  answer(...args).refused.map(({ code }) => code);

describe('allowedChain', () => {
  it('is a chain after lifting to failure', () => {
    expect(answer({ stages: [hold, lower] })).toStrictEqual({
      stages: [{ kind: 'lift' }, hold, lower],
      refused: [],
    });
  });

  it('is none where none is wanted or where the time takes it', () => {
    expect(answer(undefined)).toStrictEqual({ refused: [] });
    expect(answer({ stages: [hold] }, { skipChain: true })).toStrictEqual({ refused: [] });
  });

  it('goes on alone under a bar only with stops', () => {
    expect(codes({ stages: [hold] }, bench)).toEqual(['extension.alone-under-load']);
    expect(codes({ stages: [hold], stops: false }, bench)).toEqual(['extension.alone-under-load']);
    expect(codes({ stages: [hold], stops: true }, bench)).toEqual([]);
    // or with somebody there
    expect(codes({ stages: [hold] }, { ...bench, who: { ...client, alone: false } })).toEqual([]);
  });

  it('goes on where it is off by default only when a coach has switched it on', () => {
    expect(codes({ stages: [hold] }, { who: over65 })).toContain('extension.no-chain');
    expect(codes({ stages: [hold], switchedOn: false }, { who: over65 })).toContain(
      'extension.no-chain',
    );
    expect(codes({ stages: [hold], switchedOn: true }, { who: over65 })).toEqual([]);
  });

  it('comes back with each reason, what to do instead, and the nearest that is allowed', () => {
    const order = answer({ stages: [lower, hold] }).refused;
    expect(order).toMatchObject([{ what: 'chain', code: 'extension.wrong-order' }]);
    expect(order[0]?.message).toMatch(
      /\. Nearest to it: hold in the middle position, 20 s at most, then lower once, over 6 s\.$/,
    );
    for (const { message } of answer({ stages: [hold] }, { who: over65 }).refused)
      expect(message).toMatch(/\. Nearest to it: end the set with 2 repetitions left\.$/);
    // without the help that nobody gives only lifting to failure is left: that is no chain
    for (const { message } of answer({ stages: [{ kind: 'assisted', reps: 2 }] }).refused)
      expect(message).toMatch(/[a-z]\.$/);
    const unwell = { ...client.health, symptoms: ['chest-discomfort'] } as const;
    const asked = answer({ stages: [hold] }, { who: { ...client, health: unwell } }).refused;
    expect(asked.length).toBeGreaterThan(0);
    for (const { message } of asked) {
      expect(message).not.toContain('Nearest to it');
      expect(message).toMatch(/[a-z]\.$/);
    }
  });
});
