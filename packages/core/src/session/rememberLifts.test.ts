import { describe, expect, it } from 'vitest';
import { client, gym, pulldown } from './boathouse.testing.ts';
import type { LiftIntent, SessionIntent } from './Intent.ts';
import { type LiftPlanner, planLift } from './planLift.ts';
import { planSession, type SessionQuestion } from './planSession.ts';
import { rememberLifts } from './rememberLifts.ts';

const row = { ...pulldown, exercise: 'barbell-bent-over-row', equipment: 'short-bar' };
const press = { ...pulldown, exercise: 'dumbbell-bench-press', equipment: 'dumbbells' };
const turns = { kind: 'in-turn', transitionSeconds: 20 } as const;
const chain = {
  stages: [
    { kind: 'hold', at: 'middle', maxSeconds: 20 },
    { kind: 'lower', secondsEach: 5, maxLowerings: 3 },
  ],
} as const;
const intent: SessionIntent = {
  date: '2027-03-15',
  unit: 'kg',
  changeSeconds: 120,
  lifts: [pulldown, row],
};
const question: SessionQuestion = { client, gym, intent };

/** A planner that counts what it works out, and one that remembers it. */
function counted(most?: number) {
  const asked: string[] = [];
  const planOne: LiftPlanner = (lift) => {
    asked.push(lift.lift.intent.exercise);
    return planLift(lift);
  };
  return { asked, remembering: rememberLifts(most, planOne) };
}

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

  it('works out only the lifts that a change touches', () => {
    const { asked, remembering } = counted();
    planSession(question, remembering);
    expect(asked).toEqual(['cable-pulldown', 'barbell-bent-over-row']);
    const renamed = { ...client, name: 'Somebody else' };
    planSession({ ...question, client: renamed }, remembering);
    expect(asked).toHaveLength(2);
    const last = { ...row, sets: row.sets + 1 };
    planSession({ ...question, intent: { ...intent, lifts: [pulldown, last] } }, remembering);
    expect(asked.slice(2)).toEqual(['barbell-bent-over-row']);
  });

  it('asks for no lift again for sets of another one', () => {
    const { asked, remembering } = counted();
    planSession(question, remembering);
    const [known] = client.sets;
    if (!known) throw new Error('no set');
    const elsewhere = [
      { ...known, exercise: 'cable-row' },
      { ...known, equipment: 'tower' },
    ];
    const more = { ...client, sets: [...client.sets, ...elsewhere] };
    planSession({ ...question, client: more }, remembering);
    expect(asked).toHaveLength(2);
    const own = { ...client, sets: [...client.sets, { ...known, date: '2027-03-10' }] };
    planSession({ ...question, client: own }, remembering);
    // the row comes after a pulldown with another load
    expect(asked.slice(2)).toEqual(['cable-pulldown', 'barbell-bent-over-row']);
  });

  it('asks for rounds again when their second lift changes', () => {
    const { asked, remembering } = counted();
    const [known] = client.sets;
    if (!known) throw new Error('no set');
    const pressed = { ...known, exercise: press.exercise, equipment: press.equipment };
    const both = {
      ...client,
      sets: [known, { ...pressed, load: { value: 20, unit: 'kg' } }],
    } as const;
    const rounds = (second: LiftIntent) => {
      const lifts = [{ ...pulldown, join: turns }, second];
      const asking = { ...question, client: both, intent: { ...intent, lifts } };
      return { plan: planSession(asking, remembering), fresh: planSession(asking) };
    };
    rounds(press);
    expect(rounds(press).plan).toEqual(rounds(press).fresh);
    // two lifts are one question
    expect(asked).toEqual(['cable-pulldown']);
    const longer = rounds({ ...press, sets: 3 });
    expect(longer.plan).toEqual(longer.fresh);
    expect(asked).toEqual(['cable-pulldown', 'cable-pulldown']);
  });

  it('keeps as many answers as it may, and forgets the one longest unused first', () => {
    const { asked, remembering } = counted(2);
    const only = (lift: LiftIntent) =>
      planSession({ ...question, intent: { ...intent, lifts: [lift] } }, remembering);
    only(pulldown);
    only(row);
    only(pulldown);
    only(row);
    only(pulldown);
    expect(asked).toEqual(['cable-pulldown', 'barbell-bent-over-row']);
    // the row has been unused for longest
    only(press);
    only(pulldown);
    expect(asked.slice(2)).toEqual(['dumbbell-bench-press']);
    only(row);
    expect(asked.slice(3)).toEqual(['barbell-bent-over-row']);
  });
});
