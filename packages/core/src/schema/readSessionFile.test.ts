import { describe, expect, it } from 'vitest';
import { readSessionFile } from './readSessionFile.ts';

const lift = {
  exercise: 'chin-up',
  equipment: 'station',
  window: { minReps: 6, maxReps: 9 },
  tempo: '3-0-1-0',
  sets: 2,
  restSeconds: 150,
};
const file = {
  client: { name: 'Winch hand', experience: 'some', alone: true, health: {}, sets: [] },
  gym: {
    name: 'Boathouse',
    plates: [],
    equipment: [{ kind: 'body', id: 'station', name: 'Chin-up station' }],
  },
  intent: { date: '2027-03-15', unit: 'kg', changeSeconds: 120, lifts: [lift] },
};

function firstProblem(input: unknown): string {
  const read = readSessionFile(input);
  return read.ok ? 'none' : `${read.problems[0]?.path.join('.')}: ${read.problems[0]?.message}`;
}

function withLift(change: object): unknown {
  return { ...file, intent: { ...file.intent, lifts: [{ ...lift, ...change }] } };
}

describe('readSessionFile', () => {
  it('reads a whole file, with tempo and ends of sets in either notation', () => {
    const set = {
      date: '2027-03-08',
      exercise: 'chin-up',
      equipment: 'station',
      load: '0 kg',
      reps: 7,
    };
    const sets = [
      { ...set, end: 'failure', tempo: '30X0' },
      {
        ...set,
        end: { kind: 'reserve', repsLeft: 2 },
        tempo: { code: '1-0-3-0', order: 'lift-first' },
      },
    ];
    const read = readSessionFile({ ...file, client: { ...file.client, sets } });
    expect(read).toMatchObject({
      ok: true,
      value: {
        client: {
          sets: [
            { end: { kind: 'failure' }, tempo: { lowerSeconds: 3, liftSeconds: 'X' } },
            { end: { kind: 'reserve', repsLeft: 2 }, tempo: { lowerSeconds: 3, liftSeconds: 1 } },
          ],
        },
      },
    });
  });

  it('reads what is fixed, joined and carried past failure, and muscles in place of lifts', () => {
    const wishes = {
      join: { kind: 'pair', transitionSeconds: 10 },
      chain: {
        stages: [
          { kind: 'hold', at: 'contracted', maxSeconds: 20 },
          { kind: 'lower', secondsEach: 5, maxLowerings: 3 },
        ],
      },
      overrules: { load: '7.5 kg', warmUp: [{ load: '0 kg', reps: 3 }], variant: 'usual' },
    };
    const { exercise: _, equipment: __, ...done } = lift;
    const muscles = { ...done, muscles: ['lats', 'biceps'] };
    const more = { minutesAtMost: 30, overrules: { nextDate: '2027-03-18' }, muscles };
    const reports = { soreness: { lats: 'clear' }, shortNights: 1 };
    const stations = [{ station: 'chin-up-bar', equipment: 'station' }];
    const read = readSessionFile({
      client: { ...file.client, reports },
      gym: { ...file.gym, stations },
      intent: { ...file.intent, ...more, lifts: [{ ...lift, ...wishes }] },
    });
    expect(read).toMatchObject({
      ok: true,
      value: {
        client: { reports },
        gym: { stations },
        intent: {
          minutesAtMost: 30,
          muscles: { muscles: ['lats', 'biceps'] },
          lifts: [{ join: wishes.join, chain: wishes.chain, overrules: { load: { value: 7.5 } } }],
        },
      },
    });
  });

  it('says what would be right', () => {
    expect(firstProblem(withLift({ window: { minReps: 9, maxReps: 6 } }))).toBe(
      'intent.lifts.0.window: The window is upside down: minReps is 9 and maxReps 6. Give the smaller number first.',
    );
    expect(firstProblem(withLift({ tempo: '0-0-0-0' }))).toMatch(/^intent\.lifts\.0\.tempo: /);
    expect(firstProblem(withLift({ tempo: '3-0' }))).toContain('3-0-1-0');
    expect(firstProblem(withLift({ sets: 0 }))).toBe(
      'intent.lifts.0.sets: Give the number of sets as a whole number from 1 to 10.',
    );
    expect(firstProblem({ ...file, intent: { ...file.intent, lifts: [] } })).toBe(
      'intent.lifts: Name at least one lift, or the muscles to train.',
    );
    expect(firstProblem(withLift({ chain: { stages: [{ kind: 'jump' }] } }))).toContain(
      'part-range, lighter, pause, assisted, hold or lower',
    );
    expect(firstProblem(withLift({ overrules: { load: '20' } }))).toContain('with its unit');
    expect(firstProblem({ ...file, intent: { ...file.intent, date: '2027-02-30' } })).toContain(
      'such as 2027-03-28',
    );
  });

  it('refuses what would poison an object', () => {
    const poisoned = JSON.parse('{"client":{"__proto__":{"name":"x"}},"gym":{},"intent":{}}');
    expect(readSessionFile(poisoned).ok).toBe(false);
    expect(({} as { name?: string }).name).toBeUndefined();
  });
});

it('wants a lift or a muscle', () => {
  const read = readSessionFile({ ...file, intent: { ...file.intent, lifts: [] } });
  expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(['intent.nothing-wanted']);
});

it('tells a weight without a unit from one in a unit that is not known', () => {
  const codeOf = (bodyWeight: string) => {
    const read = readSessionFile({ ...file, client: { ...file.client, bodyWeight } });
    return read.ok ? 'none' : read.problems[0]?.code;
  };
  expect(codeOf('78')).toBe('load.no-unit');
  expect(codeOf('12 st')).toBe('load.unknown-unit');
});
