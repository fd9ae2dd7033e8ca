import { describe, expect, it } from 'vitest';
import { client, gym, pulldown } from './boathouse.testing.ts';
import { planSession, type SessionQuestion } from './planSession.ts';
import { rememberLifts } from './rememberLifts.ts';
import { intent, press, question, row, turns } from './twoLifts.testing.ts';

const chain = {
  stages: [
    { kind: 'hold', at: 'middle', maxSeconds: 20 },
    { kind: 'lower', secondsEach: 5, maxLowerings: 3 },
  ],
} as const;

describe('rememberLifts', () => {
  const fresh = planSession(question);

  it.each([
    ['another day', { ...question, intent: { ...intent, date: '2027-03-29' } }],
    ['another unit', { ...question, intent: { ...intent, unit: 'lb' as const } }],
    [
      'the lifts the other way round',
      { ...question, intent: { ...intent, lifts: [row, pulldown] } },
    ],
    ['less time between', { ...question, intent: { ...intent, changeSeconds: 0 } }],
    ['a newcomer', { ...question, client: { ...client, experience: 'new' as const } }],
    [
      'somebody there, where that decides what may follow failure',
      {
        ...question,
        client: { ...client, alone: false },
        intent: { ...intent, lifts: [{ ...pulldown, chain }, row] },
      },
    ],
    [
      'nobody there for it',
      { ...question, intent: { ...intent, lifts: [{ ...pulldown, chain }, row] } },
    ],
    [
      'rounds of two lifts',
      { ...question, intent: { ...intent, lifts: [{ ...pulldown, join: turns }, press] } },
    ],
    [
      'a fixed load',
      {
        ...question,
        intent: {
          ...intent,
          lifts: [{ ...pulldown, overrules: { load: { value: 40, unit: 'kg' } } }, row],
        },
      },
    ],
    ['little time', { ...question, intent: { ...intent, minutesAtMost: 9 } }],
    ['without sets', { ...question, client: { ...client, sets: [] } }],
    [
      'raised blood pressure',
      {
        ...question,
        client: {
          ...client,
          health: { bloodPressure: { status: 'treated' as const, doctorAgrees: true } },
        },
      },
    ],
    ['without plates', { ...question, gym: { ...gym, plates: [] } }],
    [
      'another stack',
      {
        ...question,
        gym: {
          ...gym,
          equipment: gym.equipment.map((item) =>
            item.kind === 'stack' ? { ...item, pulleyRatio: 2 } : item,
          ),
        },
      },
    ],
  ] satisfies [string, SessionQuestion][])(
    'gives what a fresh plan gives after the change to %s and back',
    (_, other) => {
      const planOne = rememberLifts();
      expect(planSession(question, planOne)).toEqual(fresh);
      expect(planSession(other, planOne)).toEqual(planSession(other));
      expect(planSession(question, planOne)).toEqual(fresh);
    },
  );
});
