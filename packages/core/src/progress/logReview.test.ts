import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import { kg } from '../load/index.ts';
import { enduranceCurves, generalCurve, shareForReps } from '../strength/index.ts';
import type { LoggedSet } from './LoggedSet.ts';
import { reviewLog } from './reviewLog.ts';
import { weeklyDose } from './weeklyDose.ts';

const set = (date: string, exercise: string, more: Partial<LoggedSet> = {}): LoggedSet => ({
  date,
  exercise,
  set: 1,
  load: { value: 40, unit: 'kg' },
  counts: 'total',
  reps: 8,
  ...more,
});

describe('weeklyDose', () => {
  it('counts prime movers whole, helpers half, by weeks from Monday', () => {
    const { weeks, unknown } = weeklyDose(
      [
        set('2026-03-01', 'leg-extension'),
        set('2026-03-02', 'leg-extension'),
        set('2026-03-02', 'leg-extension', { set: 2 }),
        set('2026-03-02', 'cable-row'),
        set('2026-03-02', 'ropes'),
      ],
      exercises,
    );
    expect(weeks.map(({ from }) => from)).toEqual(['2026-02-23', '2026-03-02']);
    const sets = Object.fromEntries(weeks[1]?.muscles.map((one) => [one.muscle, one.sets]) ?? []);
    expect(sets).toMatchObject({ vasti: 2, lats: 1, biceps: 0.5 });
    expect(unknown).toEqual(['ropes']);
  });

  it('counts both sides as one set, and says which sets were light or on a trip', () => {
    const { weeks } = weeklyDose(
      [
        set('2026-03-02', 'one-arm-dumbbell-row', { side: 'left' }),
        set('2026-03-02', 'one-arm-dumbbell-row', { side: 'right' }),
        set('2026-03-04', 'one-arm-dumbbell-row', { tags: ['travel'] }),
      ],
      exercises,
    );
    const lats = weeks[0]?.muscles.find(({ muscle }) => muscle === 'lats');
    expect(lats).toEqual({ muscle: 'lats', sets: 2, setAside: 1 });
  });

  it('begins its weeks on Monday and keeps those without a set', () => {
    const { weeks } = weeklyDose(
      [set('2026-03-15', 'leg-extension'), set('2026-02-23', 'leg-extension')],
      exercises,
    );
    expect(weeks.map(({ from, muscles }) => [from, muscles.length > 0])).toEqual([
      ['2026-02-23', true],
      ['2026-03-02', false],
      ['2026-03-09', true],
    ]);
    expect(weeklyDose([], exercises)).toEqual({ weeks: [], unknown: [] });
  });

  it('counts every set that is written, and a side with no other one', () => {
    const count = (...log: readonly LoggedSet[]) =>
      weeklyDose(log, exercises).weeks[0]?.muscles.find(({ muscle }) => muscle === 'vasti');
    const one = set('2026-03-02', 'leg-extension');
    const side = { ...one, side: 'left' } as const;
    expect(count(one, one)?.sets).toBe(2);
    expect(count(side)?.sets).toBe(1);
    expect(count(side, { ...side, side: 'right' })?.sets).toBe(1);
    expect(count(side, { ...side, set: 2 })?.sets).toBe(2);
    expect(count(side, { ...side, date: '2026-03-03' })?.sets).toBe(2);
    expect(count(side, { ...side, exercise: 'leg-press' })?.sets).toBe(2);
  });

  it('names most sets first, of equals by name, and what it does not know by name', () => {
    const { weeks, unknown } = weeklyDose(
      [
        set('2026-03-02', 'leg-extension'),
        set('2026-03-02', 'cable-row'),
        set('2026-03-02', 'cable-row'),
        set('2026-03-02', 'sled'),
        set('2026-03-02', 'ropes'),
      ],
      exercises,
    );
    const found = weeks[0]?.muscles.map(({ muscle, sets }) => [sets, muscle] as const) ?? [];
    const byHand = [...found].sort(
      ([a, one], [b, other]) => b - a || one.localeCompare(other, 'en'),
    );
    expect(found).toEqual(byHand);
    expect(found.length).toBeGreaterThan(4);
    expect(unknown).toEqual(['ropes', 'sled']);
  });

  it('keeps apart what was light among other tags, and what was not', () => {
    const { weeks } = weeklyDose(
      [
        set('2026-03-02', 'leg-extension', { tags: ['new-shoes', 'light'] }),
        set('2026-03-02', 'leg-extension', { tags: ['new-shoes'] }),
        set('2026-03-03', 'leg-extension', { tags: ['test'] }),
      ],
      exercises,
    );
    expect(weeks[0]?.muscles[0]).toMatchObject({ sets: 3, setAside: 2 });
  });
});

describe('reviewLog', () => {
  it('shows each exercise with its trend, and sets trips aside', () => {
    const log = Array.from({ length: 10 }, (_, week) => {
      const date = new Date(Date.UTC(2026, 0, 5 + 7 * week)).toISOString().slice(0, 10);
      return set(date, 'cable-row', { load: { value: 40 + week, unit: 'kg' } });
    });
    const trip = set('2026-03-12', 'cable-row', {
      load: { value: 20, unit: 'kg' },
      tags: ['travel'],
    });
    const { lifts } = reviewLog({ log: [...log, trip], exercises, on: '2026-03-16' });
    expect(lifts[0]).toMatchObject({
      exercise: 'cable-row',
      sessions: 11,
      setAside: 1,
      daysSinceLast: 4,
    });
    expect(lifts[0]?.lately.kind === 'trend' && lifts[0].lately.chanceRising).toBeGreaterThan(0.9);
  });

  it('keeps to the day it is asked for', () => {
    const log = [set('2026-03-02', 'cable-row'), set('2026-03-09', 'cable-row')];
    expect(reviewLog({ log, exercises, on: '2026-03-05' }).lifts[0]?.daysSinceLast).toBe(3);
  });

  it('names the sets that need a body weight', () => {
    const log = [set('2026-03-02', 'chin-up', { counts: 'added', load: { value: 5, unit: 'kg' } })];
    const review = (bodyWeight?: ReturnType<typeof kg>) =>
      reviewLog({ log, exercises, on: '2026-03-05', body: bodyWeight ? { bodyWeight } : {} });
    expect(review().lifts).toEqual([]);
    expect(review(kg(80)).lifts).toHaveLength(1);
  });

  it('names the exercise trained last first, of equals by name', () => {
    const log = [
      set('2026-03-02', 'leg-press'),
      set('2026-03-09', 'leg-extension'),
      set('2026-03-09', 'cable-row'),
    ];
    const names = (sets: readonly LoggedSet[]) =>
      reviewLog({ log: sets, exercises, on: '2026-03-09' }).lifts.map(({ exercise }) => exercise);
    expect(names(log)).toEqual(['cable-row', 'leg-extension', 'leg-press']);
    expect(names(log.toReversed())).toEqual(['cable-row', 'leg-extension', 'leg-press']);
  });

  it('looks back eight weeks for what is lately, and at everything beside', () => {
    // every fourth day from 1 January to 22 March 2026: 21 sessions
    const log = Array.from({ length: 21 }, (_, i) =>
      set(new Date(Date.UTC(2026, 0, 1 + 4 * i)).toISOString().slice(0, 10), 'cable-row'),
    );
    const sessions = (trendDays?: number) => {
      const [lift] = reviewLog({
        log,
        exercises,
        on: '2026-03-22',
        ...(trendDays !== undefined && { trendDays }),
      }).lifts;
      return [lift?.lately.sessions, lift?.allAlong.sessions, lift?.comparable];
    };
    // 56 days are 14 steps of four: 15 sessions with both ends
    expect(sessions()).toEqual([15, 21, 21]);
    expect(sessions(8)).toEqual([3, 21, 21]);
  });

  it('reads strength by the curve of the exercise, the general one for an unknown name', () => {
    const review = (exercise: string) => {
      const log = ['2026-03-02', '2026-03-05', '2026-03-09'].map((date) =>
        set(date, exercise, { reps: 11 }),
      );
      const [lift] = reviewLog({ log, exercises, on: '2026-03-09' }).lifts;
      expect(lift?.lately).toEqual(lift?.allAlong);
      return lift?.allAlong.kind === 'trend' ? lift.allAlong.line[0]?.measured : undefined;
    };
    expect(review('cable-row')).toBeCloseTo(40 / shareForReps(11, enduranceCurves.pull), 9);
    expect(review('my own row')).toBeCloseTo(40 / shareForReps(11, generalCurve), 9);
  });

  it('shows how far the sides are apart, without sessions that were set aside', () => {
    const sides = (date: string, left: number, right: number, tags: readonly string[] = []) => [
      set(date, 'one-arm-dumbbell-row', { side: 'left', reps: left, tags }),
      set(date, 'one-arm-dumbbell-row', { side: 'right', reps: right, tags }),
    ];
    const log = [...sides('2026-03-02', 8, 10), ...sides('2026-03-05', 3, 15, ['light'])];
    const [lift] = reviewLog({ log, exercises, on: '2026-03-09' }).lifts;
    expect(lift?.sides).toMatchObject({ kind: 'gap', reps: 2 });
    expect(lift?.setAside).toBe(1);
  });

  it('moves as much of the body as the exercise does', () => {
    const [half] = exercises.filter(({ movedShare }) => movedShare);
    if (!half?.movedShare) throw new Error('no exercise moves a part of the body');
    const log = [
      set('2026-03-02', half.id, { counts: 'added', load: { value: 5, unit: 'kg' } }),
      set('2026-03-02', 'chin-up', { counts: 'added', load: { value: 5, unit: 'kg' } }),
    ];
    const { lifts } = reviewLog({ log, exercises, on: '2026-03-02', body: { bodyWeight: kg(80) } });
    const load = (id: string) => lifts.find(({ exercise }) => exercise === id)?.last.sets[0].load;
    const share = (half.movedShare.low + half.movedShare.high) / 2;
    expect(load(half.id)).toBe(kg(80 * share + 5));
    expect(load('chin-up')).toBe(kg(85));
  });
});
