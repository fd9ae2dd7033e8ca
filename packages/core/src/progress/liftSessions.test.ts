import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { comparableSessions } from './comparableSessions.ts';
import { sessionOn } from './gym.testing.ts';
import type { LoggedSet } from './LoggedSet.ts';
import { liftSessions } from './liftSessions.ts';
import { haveSameLoad, topSets } from './topSets.ts';

const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const row: LoggedSet = {
  date: '2026-03-02',
  exercise: 'row',
  set: 1,
  load: kilos(30),
  counts: 'each-hand',
  reps: 8,
};
const sessionsOf = (...sets: readonly Partial<LoggedSet>[]) =>
  liftSessions(
    sets.map((set) => ({ ...row, ...set })),
    'row',
  ).sessions;

describe('liftSessions', () => {
  it('puts dates and sets in order, and keeps what was noted', () => {
    const sessions = sessionsOf(
      { date: '2026-03-05', set: 2, reps: 7, restSeconds: 0, tempo: '3010' },
      { date: '2026-03-05', set: 1, reps: 9, end: { kind: 'failure' } },
      { date: '2026-03-02', reps: 10 },
      { exercise: 'press', reps: 1 },
    );
    const set = { load: kg(30), shown: kg(30) };
    expect(sessions.map(({ date, sets }) => [date, sets])).toStrictEqual([
      ['2026-03-02', [{ ...set, reps: 10 }]],
      [
        '2026-03-05',
        [
          { ...set, reps: 9, end: { kind: 'failure' } },
          { ...set, reps: 7, restSeconds: 0, tempo: '3010' },
        ],
      ],
    ]);
  });

  it('takes both sides as one set of the weaker side with the lighter load', () => {
    const left = { side: 'left', reps: 8, load: kilos(32), end: { kind: 'failure' } } as const;
    const right = { side: 'right', reps: 10, load: kilos(30) } as const;
    const both = { load: kg(30), shown: kg(30), reps: 8, sides: { left: 8, right: 10 } };
    for (const pair of [
      [left, right],
      [right, left],
    ]) {
      expect(sessionsOf(...pair)[0]?.sets).toEqual([{ ...both, end: { kind: 'failure' } }]);
    }
    const [weak] = sessionsOf({ ...left, reps: 11 }, right)[0]?.sets ?? [];
    expect(weak).toEqual({ ...both, reps: 10, sides: { left: 11, right: 10 } });
    // of two that are level the left one's end stands
    expect(sessionsOf(right, { ...left, reps: 10 })[0]?.sets[0].end).toEqual({ kind: 'failure' });
  });

  it('keeps sets apart that are numbered alike or have a number of their own', () => {
    expect(sessionsOf({}, {})[0]?.sets).toHaveLength(2);
    const sides = [1, 2].flatMap((set) => [
      { set, side: 'left' as const },
      { set, side: 'right' as const },
    ]);
    expect(sessionsOf(...sides)[0]?.sets).toHaveLength(2);
    expect(sessionsOf({ side: 'left', reps: 6 })[0]?.sets).toEqual([
      { load: kg(30), shown: kg(30), reps: 6 },
    ]);
  });

  it('gathers the tags of all sets, each once', () => {
    const [session] = sessionsOf(
      { tags: ['travel', 'light'] },
      { set: 2, tags: ['light'] },
      { set: 3 },
    );
    expect(session?.tags).toEqual(['light', 'travel']);
  });

  it('names every set that could not take part', () => {
    const set = { ...row, counts: 'added', load: kilos(5) } as const;
    expect(liftSessions([set], 'row')).toEqual({
      sessions: [],
      leftOut: [{ set, reason: 'body-weight-not-given' }],
    });
  });
});

describe('topSets', () => {
  it('are those at the heaviest number, by the one with the fewest repetitions', () => {
    const light = sessionOn('2026-03-02', kilos(40), [12, 3]).sets;
    const heavy = sessionOn('2026-03-02', kilos(50), [8, 6, 7]).sets;
    const session = sessionOn('2026-03-02', kilos(50), [1]);
    const top = topSets({ ...session, sets: [light[0], ...heavy, ...light.slice(1)] });
    expect(top).toEqual({ load: kg(50), shown: kg(50), sets: heavy, fewest: 6 });
  });

  it('have the same load while the body weight under it moves by a fiftieth at most', () => {
    const on = (load: number, shown = 10) => ({
      load: kg(load),
      shown: kg(shown),
      sets: sessionOn('2026-03-02', kilos(1), [1]).sets,
      fewest: 0,
    });
    expect(haveSameLoad(on(102), on(100))).toBe(true);
    expect(haveSameLoad(on(98), on(100))).toBe(true);
    expect(haveSameLoad(on(102.01), on(100))).toBe(false);
    expect(haveSameLoad(on(97.99), on(100))).toBe(false);
    expect(haveSameLoad(on(100, 12.5), on(100))).toBe(false);
    expect(toKg(on(100).load)).toBe(100);
  });
});

describe('comparableSessions', () => {
  const on = (day: number, more: object) =>
    sessionOn(`2026-03-0${day}`, kilos(60), [8, 7, 6], more);
  const compared = (first: object, second: object) =>
    comparableSessions([on(2, first), on(5, second)]).length === 2;

  it('have shortest rests within a quarter of the longer one', () => {
    expect(compared({ restSeconds: 90 }, { restSeconds: 120 })).toBe(true);
    expect(compared({ restSeconds: 89 }, { restSeconds: 120 })).toBe(false);
    expect(compared({ restSeconds: 120 }, { restSeconds: 90 })).toBe(true);
    expect(compared({ restSeconds: 120 }, { restSeconds: 89 })).toBe(false);
  });

  it('are not told apart by what was not noted', () => {
    expect(compared({}, { restSeconds: 60 })).toBe(true);
    expect(compared({ restSeconds: 60 }, {})).toBe(true);
    expect(compared({ tempo: '3010' }, {})).toBe(true);
    expect(compared({}, { tempo: '3010' })).toBe(true);
    expect(compared({ tempo: '3010' }, { tempo: '2010' })).toBe(false);
  });

  it('leave out the rest before the first set, which no set has tired', () => {
    const rests = (...seconds: readonly number[]) => {
      const session = on(2, {});
      const [one, ...more] = session.sets.map((set, i) => ({
        ...set,
        restSeconds: seconds[i] ?? 0,
      }));
      return one ? { ...session, sets: [one, ...more] as const } : session;
    };
    expect(comparableSessions([rests(10, 200, 120), rests(300, 120, 150)])).toHaveLength(2);
    expect(comparableSessions([rests(120, 200, 80), rests(120, 120, 150)])).toHaveLength(1);
  });

  it('pass over a session with one of the tags, whatever else it is tagged', () => {
    const tagged = on(3, { tags: ['new-shoes', 'test'] });
    expect(comparableSessions([on(2, {}), tagged, on(5, { tags: ['new-shoes'] })])).toHaveLength(2);
    expect(comparableSessions([tagged])).toEqual([]);
  });
});
