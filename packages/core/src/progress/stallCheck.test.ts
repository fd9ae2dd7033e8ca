import { describe, expect, it } from 'vitest';
import { chanceOfRate } from './chanceOfRate.ts';
import { sessionOn } from './gym.testing.ts';
import { stallCauses } from './stallCauses.ts';
import { stallCheck } from './stallCheck.ts';
import { strengthTrend } from './strengthTrend.ts';

const date = (day: number) => new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10);
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;

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

  it('is on target without a session, and gives no chance below three', () => {
    expect(stallCheck({ sessions: [], target })).toMatchObject({
      kind: 'on-target',
      misses: 0,
      sessions: 0,
      chanceOfNoGain: undefined,
    });
    const two = log([5, 4, 3], [4, 4, 4]);
    expect(stallCheck({ sessions: two, target, rules: { missesForStall: 2 } })).toMatchObject({
      kind: 'too-few-misses',
      misses: 2,
      chanceOfNoGain: undefined,
    });
  });

  it('asks for as many sets as the target has, each with its repetitions', () => {
    const kind = (...reps: readonly number[]) => stallCheck({ sessions: log(reps), target }).kind;
    expect(kind(5, 5, 5)).toBe('on-target');
    expect(kind(5, 5, 5, 1)).toBe('on-target');
    expect(kind(6, 6)).toBe('too-few-misses');
    expect(kind(5, 5, 4)).toBe('too-few-misses');
  });

  it('gives the chance that the trend of these sessions gains less than is worthwhile', () => {
    const sessions = log([5, 4, 3], [5, 4, 4], [4, 4, 4]);
    const trend = strengthTrend(sessions, { by: 'mean-of-top-sets' });
    if (trend.kind !== 'trend') throw new Error(trend.kind);
    const { chanceOfNoGain, misses } = stallCheck({ sessions, target });
    expect(misses).toBe(3);
    expect(chanceOfNoGain).toBeCloseTo(1 - chanceOfRate(trend, 0.25), 12);
    const other = { worthwhilePercentPerWeek: 2 };
    expect(stallCheck({ sessions, target, rules: other }).chanceOfNoGain).toBeCloseTo(
      1 - chanceOfRate(trend, 2),
      12,
    );
    const kindAt = (stallChance: number) =>
      stallCheck({ sessions, target, rules: { stallChance } }).kind;
    expect(kindAt(chanceOfNoGain ?? 0)).toBe('stall');
    expect(kindAt((chanceOfNoGain ?? 0) + 1e-6)).toBe('missed-but-rising');
  });

  it('goes by the curve of the lift', () => {
    const sessions = log([9, 4, 3], [5, 4, 4], [4, 4, 4]);
    const chance = (kappa: number) =>
      stallCheck({ sessions, target: { sets: 3, reps: 10 }, curve: { kappa, alpha: 0.5 } })
        .chanceOfNoGain;
    expect(chance(20)).not.toBeCloseTo(chance(80) ?? 0, 3);
  });

  it.each([
    ['on-target', [[5, 5, 5]], /met its target/],
    ['too-few-misses', [[5, 5, 4]], /^1 comparable session under/],
    [
      'too-few-misses',
      [
        [5, 5, 4],
        [5, 4, 4],
      ],
      /^2 comparable sessions under/,
    ],
    [
      'stall',
      [
        [5, 4, 3],
        [5, 4, 4],
        [4, 4, 4],
      ],
      /^3 comparable .* is [5-9]\d %/,
    ],
    [
      'missed-but-rising',
      [
        [1, 1, 1],
        [2, 2, 2],
        [3, 3, 3],
        [4, 4, 4],
      ],
      /^4 sessions .* is \d\d? %/,
    ],
  ] as const)('says what it found: %s', (kind, reps, words) => {
    const found = stallCheck({ sessions: log(...reps), target });
    expect(found.kind).toBe(kind);
    expect(found.says).toMatch(words);
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
