import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import { kg } from '../load/index.ts';
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
});
