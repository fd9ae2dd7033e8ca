import { describe, expect, it } from 'vitest';
import { chanceOfRate } from './chanceOfRate.ts';
import { comparableSessions } from './comparableSessions.ts';
import { sessionOn } from './gym.testing.ts';
import { stallCauses } from './stallCauses.ts';
import { stallCheck } from './stallCheck.ts';
import { strengthTrend } from './strengthTrend.ts';

const date = (day: number) => new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10);
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;

describe('strengthTrend', () => {
  it('finds the rate that the loads were made with', () => {
    // eight repetitions every week with 1 % more: the one-rep max rises by 1 % a week exactly
    const sessions = Array.from({ length: 26 }, (_, week) =>
      sessionOn(date(7 * week), kilos(Math.round(60_000 * 1.01 ** week) / 1000), [8]),
    );
    const trend = strengthTrend(sessions);
    if (trend.kind !== 'trend') throw new Error(trend.kind);
    // drawn towards 0 by what was held likely before, by less than a fiftieth
    expect(trend.percentPerWeek.likely).toBeGreaterThan(0.98);
    expect(trend.percentPerWeek.likely).toBeLessThan(1);
    expect(trend.percentPerWeek.low).toBeLessThan(1);
    expect(trend.percentPerWeek.high).toBeGreaterThan(1);
    expect(trend.chanceRising).toBeGreaterThan(0.999);
  });

  it('holds rising and falling as likely where nothing moves', () => {
    const sessions = Array.from({ length: 8 }, (_, i) => sessionOn(date(4 * i), kilos(60), [8]));
    const trend = strengthTrend(sessions);
    if (trend.kind !== 'trend') throw new Error(trend.kind);
    expect(trend.percentPerWeek.likely).toBeCloseTo(0, 9);
    expect(trend.chanceRising).toBeCloseTo(0.5, 6);
    expect(chanceOfRate(trend, 0.5) + chanceOfRate(trend, 100 * (1 / 1.005 - 1))).toBeCloseTo(1, 6);
  });

  it('is surer with more sessions', () => {
    const width = (count: number) => {
      const sessions = Array.from({ length: count }, (_, i) =>
        sessionOn(date(4 * i), kilos(60), [8]),
      );
      const trend = strengthTrend(sessions);
      return trend.kind === 'trend' ? trend.percentPerWeek.high - trend.percentPerWeek.low : 0;
    };
    expect(width(30)).toBeLessThan(width(10));
    expect(width(10)).toBeLessThan(width(4));
  });

  it('says nothing of two sessions, or of three on one day', () => {
    const one = sessionOn(date(0), kilos(60), [8]);
    expect(strengthTrend([one, one])).toEqual({ kind: 'too-few-sessions', sessions: 2 });
    expect(strengthTrend([one, one, one]).kind).toBe('too-few-sessions');
  });
});

describe('comparableSessions', () => {
  it('passes over tagged sessions and stops at another load, tempo or rest', () => {
    const sessions = [
      sessionOn(date(0), kilos(60), [8, 8], { tempo: '4010', restSeconds: 120 }),
      sessionOn(date(3), kilos(62.5), [8, 8], { tempo: '4010', restSeconds: 120 }),
      sessionOn(date(6), kilos(20), [20], { tags: ['travel'] }),
      sessionOn(date(9), kilos(62.5), [7, 6], { tempo: '4010', restSeconds: 110 }),
    ];
    const days = (list: typeof sessions) => comparableSessions(list).map((session) => session.date);
    expect(days(sessions)).toEqual([date(3), date(9)]);
    const faster = sessionOn(date(12), kilos(62.5), [8, 8], { tempo: '2010', restSeconds: 120 });
    expect(days([...sessions, faster])).toEqual([date(12)]);
    const hurried = sessionOn(date(12), kilos(62.5), [8, 8], { restSeconds: 60 });
    expect(days([...sessions, hurried])).toEqual([date(12)]);
  });
});

describe('stallCheck', () => {
  const target = { sets: 3, reps: 5 };
  const log = (...reps: readonly (readonly number[])[]) =>
    reps.map((sets, i) => sessionOn(date(3 * i), kilos(102.5), sets));

  it('calls three comparable misses without a gain a stall, and two not', () => {
    const sessions = log([5, 4, 3], [5, 4, 4], [4, 4, 4]);
    expect(stallCheck({ sessions, target }).kind).toBe('stall');
    expect(stallCheck({ sessions: sessions.slice(0, 2), target }).kind).toBe('too-few-misses');
    expect(stallCheck({ sessions, target, rules: { missesForStall: 4 } }).kind).toBe(
      'too-few-misses',
    );
  });

  it('counts misses from the last session that met the target', () => {
    const sessions = log([5, 5, 5], [5, 4, 4], [5, 5, 5], [5, 5, 4]);
    expect(stallCheck({ sessions, target })).toMatchObject({ kind: 'too-few-misses', misses: 1 });
    expect(stallCheck({ sessions: sessions.slice(0, 3), target }).kind).toBe('on-target');
  });

  it('does not count a session with another load', () => {
    const sessions = [...log([5, 4, 3], [5, 4, 4]), sessionOn(date(9), kilos(105), [4, 4, 4])];
    expect(stallCheck({ sessions, target })).toMatchObject({ kind: 'too-few-misses', misses: 1 });
  });
});

describe('stallCauses', () => {
  it('puts first what the log shows, then asks about sleep, food and illness', () => {
    const sessions = [
      sessionOn(date(0), kilos(80), [8, 8], { restSeconds: 180 }),
      sessionOn(date(2), kilos(100), [5, 4], { restSeconds: 90 }),
      sessionOn(date(3), kilos(100), [5, 4], { restSeconds: 90 }),
      sessionOn(date(4), kilos(100), [4, 4], { restSeconds: 90 }),
    ];
    const causes = stallCauses({ sessions, hoursNeeded: 48 });
    expect(causes.map(({ id }) => id)).toEqual([
      'too-soon',
      'large-step',
      'shorter-rests',
      'short-sleep',
      'too-little-food',
      'illness-or-strain',
      'work-changed',
    ]);
    for (const { test } of causes) expect(test.length).toBeGreaterThan(0);
  });
});
