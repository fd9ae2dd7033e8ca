import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { shareForReps } from '../strength/index.ts';
import { chanceOfRate } from './chanceOfRate.ts';
import { comparableSessions } from './comparableSessions.ts';
import { sessionOn } from './gym.testing.ts';
import type { SessionSet } from './LiftSession.ts';
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

  it('measures each session by its best set, or by the mean of its sets at the top load', () => {
    const mixed = (day: number) => {
      const [heavy, light] = [sessionOn(date(day), kilos(60), [8, 4]), kg(50)];
      const back = { load: light, shown: light, reps: 20 };
      const last = { ...back, reps: 5 };
      return { ...heavy, sets: [...heavy.sets, back, last] as [SessionSet, ...SessionSet[]] };
    };
    const sessions = [0, 3, 6].map(mixed);
    const measured = (by?: 'best-set' | 'mean-of-top-sets') => {
      const trend = strengthTrend(sessions, by ? { by } : {});
      return trend.kind === 'trend' ? trend.line.map((point) => point.measured) : [];
    };
    const best = 50 / shareForReps(20);
    expect(best).toBeGreaterThan(60 / shareForReps(8));
    for (const value of measured()) expect(value).toBeCloseTo(best, 9);
    const mean = Math.sqrt((60 / shareForReps(8)) * (60 / shareForReps(4)));
    for (const value of measured('mean-of-top-sets')) expect(value).toBeCloseTo(mean, 9);
  });

  it('is a line through the sessions with a band at each, wider away from the middle', () => {
    const sessions = [0, 7, 14].map((day) => sessionOn(date(day), kilos(60), [8]));
    const trend = strengthTrend(sessions, { level: 0.9 });
    if (trend.kind !== 'trend') throw new Error(trend.kind);
    expect(trend.sessions).toBe(3);
    expect(trend.line.map((point) => point.date)).toEqual([date(0), date(7), date(14)]);
    const [first, middle, last] = trend.line.map(({ fitted }) => fitted);
    expect(first?.likely).toBeCloseTo(60 / shareForReps(8), 9);
    expect(first?.high).toBeCloseTo(last?.high ?? 0, 9);
    expect(middle?.high).toBeLessThan(first?.high ?? 0);
    // form of 2.5 % a day and a count of eight that is off by 0.86: three sessions, nine in ten
    const slope = Math.log(shareForReps(8.5)) - Math.log(shareForReps(7.5));
    const variance = 0.025 ** 2 + (slope * 0.86) ** 2;
    const reach = 1.6448536269514722;
    expect(middle?.high).toBeCloseTo(
      (60 / shareForReps(8)) * Math.exp(reach * Math.sqrt(variance / 3)),
      6,
    );
    const slopeSd = 1 / Math.sqrt((2 * 7 ** 2) / variance + 700 ** 2);
    expect(trend.percentPerWeek.high).toBeCloseTo(100 * (Math.exp(7 * reach * slopeSd) - 1), 6);
    expect(trend.percentPerWeek.low).toBeCloseTo(100 * (Math.exp(-7 * reach * slopeSd) - 1), 6);
    expect(trend.percentPerWeek.level).toBe(0.9);
    expect(trend.slope.sd).toBeCloseTo(slopeSd, 12);
    const end = Math.hypot(Math.sqrt(variance / 3), 7 * slopeSd);
    expect(last?.low).toBeCloseTo((60 / shareForReps(8)) * Math.exp(-reach * end), 6);
  });

  it('is as sure of a mean as its sets together are, and of the day once', () => {
    const sessions = [0, 7, 14].map((day) => sessionOn(date(day), kilos(60), [8, 8, 8, 8]));
    const trend = strengthTrend(sessions, { by: 'mean-of-top-sets' });
    if (trend.kind !== 'trend') throw new Error(trend.kind);
    const slope = Math.log(shareForReps(8.5)) - Math.log(shareForReps(7.5));
    const variance = 0.025 ** 2 + (slope * 0.86) ** 2 / 4;
    expect(trend.slope.sd).toBeCloseTo(1 / Math.sqrt((2 * 7 ** 2) / variance + 700 ** 2), 12);
  });

  it('needs three sessions and two days', () => {
    const on = (day: number) => sessionOn(date(day), kilos(60), [8]);
    expect(strengthTrend([on(0), on(1), on(1)]).kind).toBe('trend');
    expect(strengthTrend([on(0), on(0), on(1)]).kind).toBe('trend');
    expect(strengthTrend([on(0), on(9)]).kind).toBe('too-few-sessions');
  });

  it('goes down where strength does, and the chance of a rate with it', () => {
    const sessions = [10, 8, 6, 4].map((reps, i) => sessionOn(date(7 * i), kilos(60), [reps]));
    const trend = strengthTrend(sessions);
    if (trend.kind !== 'trend') throw new Error(trend.kind);
    expect(trend.percentPerWeek.likely).toBeLessThan(0);
    expect(trend.chanceRising).toBeLessThan(0.2);
    const [first, , , last] = trend.line.map(({ fitted }) => fitted.likely);
    expect(Math.log((last ?? 0) / (first ?? 1))).toBeCloseTo(21 * trend.slope.mean, 12);
    expect(chanceOfRate(trend, 0)).toBeCloseTo(trend.chanceRising, 12);
    // half way is the rate that is likely
    expect(chanceOfRate(trend, trend.percentPerWeek.likely)).toBeCloseTo(0.5, 6);
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
