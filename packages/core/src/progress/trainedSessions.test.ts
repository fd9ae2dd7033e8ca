import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import type { LoggedSet } from './LoggedSet.ts';
import { trainedSessions } from './trainedSessions.ts';

const set = (date: string, exercise: string, more: Partial<LoggedSet> = {}): LoggedSet => ({
  date,
  exercise,
  set: 1,
  load: { value: 40, unit: 'kg' },
  counts: 'total',
  reps: 8,
  ...more,
});

describe('trainedSessions', () => {
  it('does not call work new before the log can know', () => {
    const { sessions } = trainedSessions([set('2026-01-05', 'cable-row')], exercises);
    expect(sessions[0]?.work[0]?.likeSessionsDaysAgo).toBeUndefined();
  });

  it('counts like work by movement, and finds what is new', () => {
    const { sessions } = trainedSessions(
      [
        set('2026-01-05', 'cable-row'),
        set('2026-03-16', 'one-arm-dumbbell-row'),
        set('2026-03-16', 'romanian-deadlift'),
      ],
      exercises,
    );
    const [row, hinge] = sessions[1]?.work ?? [];
    // from 5 January to 16 March 2026: 26 + 28 + 16 days
    expect(row?.likeSessionsDaysAgo).toEqual([70]);
    expect(trainedSessions([set('2026-01-05', 'cable-row')], exercises).unknown).toEqual([]);
    expect(hinge?.likeSessionsDaysAgo).toEqual([]);
  });

  it('takes both sides as one set, by the side nearer to failure', () => {
    const sides = [
      set('2026-01-05', 'one-arm-dumbbell-row', {
        side: 'left',
        end: { kind: 'reserve', repsLeft: 1 },
      }),
      set('2026-01-05', 'one-arm-dumbbell-row', {
        side: 'right',
        end: { kind: 'reserve', repsLeft: 3 },
      }),
    ];
    const { sessions } = trainedSessions(sides, exercises);
    expect(sessions[0]?.work.map(({ repsInReserve }) => repsInReserve)).toEqual([1]);
  });

  it('names what it does not know', () => {
    expect(trainedSessions([set('2026-01-05', 'ropes')], exercises)).toEqual({
      sessions: [],
      unknown: ['ropes'],
    });
  });

  it('knows from day 60 of a log on what is new, and forgets after half a year', () => {
    // 6 March 2026 is 60 days after 5 January, 7 July 183 days
    const like = (date: string) =>
      trainedSessions([set('2026-01-05', 'cable-row'), set(date, 'cable-row')], exercises)
        .sessions[1]?.work[0]?.likeSessionsDaysAgo;
    expect(like('2026-03-05')).toBeUndefined();
    expect(like('2026-03-06')).toEqual([60]);
    expect(like('2026-07-07')).toEqual([183]);
    expect(like('2026-07-08')).toEqual([]);
  });

  it('counts a session once however many sets of the movement it has', () => {
    const { sessions } = trainedSessions(
      [
        set('2026-05-04', 'cable-row'),
        set('2026-01-05', 'one-arm-dumbbell-row'),
        set('2026-01-05', 'cable-row'),
        set('2026-02-02', 'cable-row'),
      ],
      exercises,
    );
    // 28 days from 5 January to 2 February, 91 more to 4 May; the log is put in order
    expect(sessions.map(({ date }) => date)).toEqual(['2026-01-05', '2026-02-02', '2026-05-04']);
    expect(sessions[2]?.work[0]?.likeSessionsDaysAgo).toEqual([119, 91]);
    expect(sessions[0]?.work).toHaveLength(2);
  });

  it('reads how a set ended, for failure where it was not noted', () => {
    const left = (end?: LoggedSet['end']) =>
      trainedSessions([set('2026-01-05', 'cable-row', end ? { end } : {})], exercises).sessions[0]
        ?.work[0];
    expect(left()).toMatchObject({ sets: 1, repsInReserve: 0 });
    expect(left({ kind: 'failure' })).toMatchObject({ repsInReserve: 0 });
    expect(left({ kind: 'reserve', repsLeft: 2 })).toMatchObject({ repsInReserve: 2 });
    expect(left({ kind: 'more', atLeast: 3 })).toMatchObject({ repsInReserve: 3 });
  });

  it('keeps sets apart that are no two sides of one', () => {
    const row = 'one-arm-dumbbell-row';
    const count = (...log: readonly LoggedSet[]) =>
      trainedSessions(log, exercises).sessions.reduce((sum, { work }) => sum + work.length, 0);
    const left = set('2026-01-05', row, { side: 'left' });
    expect(count(set('2026-01-05', row), set('2026-01-05', row))).toBe(2);
    expect(count(left, { ...left, side: 'right' })).toBe(1);
    expect(count(left, { ...left, side: 'right', set: 2 })).toBe(2);
    expect(count(left, { ...left, date: '2026-01-06' })).toBe(2);
    expect(count(left, { ...left, exercise: 'cable-row' })).toBe(2);
  });

  it('takes the side nearer to failure in whatever order they stand', () => {
    const sides = ([3, 1] as const).map((repsLeft, i) =>
      set('2026-01-05', 'one-arm-dumbbell-row', {
        side: i === 0 ? 'left' : 'right',
        end: { kind: 'reserve', repsLeft },
      }),
    );
    const [work] = trainedSessions(sides, exercises).sessions[0]?.work ?? [];
    expect(work?.repsInReserve).toBe(1);
  });

  it('is empty for an empty log, and sorts what it does not know', () => {
    expect(trainedSessions([], exercises)).toEqual({ sessions: [], unknown: [] });
    const log = ['sled', 'ropes', 'sled'].map((name) => set('2026-01-05', name));
    expect(trainedSessions(log, exercises).unknown).toEqual(['ropes', 'sled']);
  });
});
