import { describe, expect, it } from 'vitest';
import type { LoggedSet } from './LoggedSet.ts';
import { setsFromLog } from './setsFromLog.ts';

const set: LoggedSet = {
  date: '2027-03-08',
  exercise: 'one-arm-dumbbell-row',
  equipment: 'dumbbells',
  set: 1,
  load: { value: 22, unit: 'kg' },
  counts: 'each-hand',
  reps: 11,
  end: { kind: 'reserve', repsLeft: 2 },
  tempo: '3-0-2-1',
};

const brief = (log: readonly LoggedSet[]) => setsFromLog(log).map(({ date, reps }) => [date, reps]);

describe('setsFromLog', () => {
  it('gives sets as a client has them', () => {
    expect(setsFromLog([{ ...set, hands: 1, restSeconds: 90, note: 'left first' }])).toEqual([
      {
        date: '2027-03-08',
        exercise: 'one-arm-dumbbell-row',
        equipment: 'dumbbells',
        load: { value: 22, unit: 'kg' },
        reps: 11,
        end: { kind: 'reserve', repsLeft: 2 },
        tempo: {
          lowerSeconds: 3,
          pauseAfterLowerSeconds: 0,
          liftSeconds: 2,
          pauseAfterLiftSeconds: 1,
        },
      },
    ]);
    expect(setsFromLog([])).toEqual([]);
  });

  it('takes the first set of a day, and of two sides the weaker', () => {
    const log: LoggedSet[] = [
      { ...set, set: 2, reps: 9 },
      { ...set, side: 'left', reps: 12 },
      { ...set, side: 'right', reps: 10 },
      { ...set, exercise: 'cable-row', equipment: 'cable', set: 1, reps: 8 },
    ];
    expect(brief(log)).toEqual([
      ['2027-03-08', 10],
      ['2027-03-08', 8],
    ]);
  });

  it('takes six weeks before the last day of each lift', () => {
    // 8 March less 42 days is 25 January.
    const days = ['2027-03-08', '2027-01-24', '2027-01-25'].map((date) => ({ ...set, date }));
    const old = { ...set, equipment: 'handles', date: '2026-01-01' };
    expect(brief([...days, old]).map(([date]) => date)).toEqual([
      '2026-01-01',
      '2027-01-25',
      '2027-03-08',
    ]);
  });

  it.each<[string, Partial<LoggedSet>]>([
    ['a name of one’s own', { exercise: 'Rudern' }],
    ['a light session', { tags: ['light'] }],
    ['another gym', { tags: ['hotel', 'travel'] }],
    ['equipment with a name of its own', { equipment: 'Old bar' }],
  ])('leaves out %s', (_, change) => {
    expect(setsFromLog([{ ...set, ...change }])).toEqual([]);
  });

  it('leaves out sets on equipment that nobody named', () => {
    const { equipment: _, ...without } = set;
    expect(setsFromLog([without])).toEqual([]);
  });

  it('counts half a repetition left down', () => {
    const ends = [
      { kind: 'reserve', repsLeft: 1.5 },
      { kind: 'more', atLeast: 2.5 },
    ] as const;
    const [left, more] = ends.map((end) => setsFromLog([{ ...set, end }])[0]?.end);
    expect(left).toEqual({ kind: 'reserve', repsLeft: 1 });
    expect(more).toEqual({ kind: 'more', atLeast: 2 });
  });

  it('takes a set without a noted end for a floor', () => {
    const { end: _, ...without } = set;
    expect(setsFromLog([without])[0]?.end).toEqual({ kind: 'more', atLeast: 0 });
  });

  it('takes the first set of a day in whatever order they stand', () => {
    const second = { ...set, set: 2, reps: 9 };
    for (const log of [
      [set, second],
      [second, set],
    ]) {
      expect(brief(log)).toEqual([['2027-03-08', 11]]);
    }
    const weaker = { ...set, side: 'left', reps: 10 } as const;
    for (const log of [
      [weaker, { ...weaker, side: 'right', reps: 12 } as const],
      [{ ...weaker, side: 'right', reps: 12 } as const, weaker],
    ]) {
      expect(brief(log)).toEqual([['2027-03-08', 10]]);
    }
  });

  it('counts six weeks from the last day in whatever order the days stand', () => {
    const days = (...dates: readonly string[]) => brief(dates.map((date) => ({ ...set, date })));
    expect(days('2027-01-24', '2027-03-08')).toEqual([['2027-03-08', 11]]);
    expect(days('2027-03-08', '2027-01-24')).toEqual([['2027-03-08', 11]]);
    expect(days('2027-03-08', '2027-02-08', '2027-03-01').map(([date]) => date)).toEqual([
      '2027-02-08',
      '2027-03-01',
      '2027-03-08',
    ]);
  });

  it('keeps a body weight and failure, and no tempo that cannot be read', () => {
    const bodyWeight = { value: 82, unit: 'kg' } as const;
    const end = { kind: 'failure' } as const;
    const [one] = setsFromLog([{ ...set, bodyWeight, end, tempo: 'slow' }]);
    expect(one).toMatchObject({ bodyWeight, end });
    expect(one && 'tempo' in one).toBe(false);
    const { tempo: _, ...without } = set;
    expect(setsFromLog([without])[0]).not.toHaveProperty('tempo');
  });

  it.each([
    ['a', true],
    ['7-up', true],
    [`a${'b'.repeat(63)}`, true],
    [`a${'b'.repeat(64)}`, false],
    ['-row', false],
    ['row!', false],
    ['!row', false],
    ['', false],
  ])('takes %j for an id: %s', (exercise, isOne) => {
    expect(setsFromLog([{ ...set, exercise }])).toHaveLength(isOne ? 1 : 0);
    expect(setsFromLog([{ ...set, equipment: exercise }])).toHaveLength(isOne ? 1 : 0);
  });

  it('takes the one that stands first of two that are level', () => {
    const left = { ...set, side: 'left', end: { kind: 'failure' } } as const;
    const right = { ...set, side: 'right' } as const;
    expect(setsFromLog([left, right])[0]?.end).toEqual({ kind: 'failure' });
  });
});
