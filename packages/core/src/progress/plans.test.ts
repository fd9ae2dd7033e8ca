import { describe, expect, it } from 'vitest';
import type { ReachableLoads } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { repsAtShare, shareForReps } from '../strength/index.ts';
import { barWith, rackOf } from './gym.testing.ts';
import { idealLine } from './idealLine.ts';
import { lightWeek } from './lightWeek.ts';

describe('idealLine', () => {
  const rack = rackOf('kg', 35, 37.5, 40, 42.5, 45, 47.5, 50);
  const lineOf = (rounding: 'down' | 'nearest', weeks = 3) => {
    const line = idealLine({
      start: kg(40),
      reps: 8,
      weeklyPercent: 2.5,
      weeks,
      loads: rack.loads,
      rounding,
    });
    return line.kind === 'line' ? line.weeks : [];
  };

  it('carries the line unrounded and rounds for use only', () => {
    // 40 · 1.025, · 1.025², · 1.025³
    expect(lineOf('down').map(({ ideal }) => toKg(ideal))).toEqual([41, 42.025, 43.075625]);
    expect(lineOf('down').map(({ load }) => toKg(load.load))).toEqual([40, 40, 42.5]);
    expect(lineOf('nearest').map(({ load }) => toKg(load.load))).toEqual([40, 42.5, 42.5]);
  });

  it('moves on, where compounding the rounded load would stay at 40 for ever', () => {
    expect(toKg(lineOf('down', 9).at(-1)?.load.load ?? kg(0))).toBe(47.5);
  });

  it('gives weeks that repeat a load more repetitions', () => {
    const [first, second, third] = lineOf('down');
    expect(first?.reps).toBeGreaterThan(8);
    expect(second?.reps).toBeGreaterThan(first?.reps ?? 0);
    expect(third?.reps).toBeLessThan(second?.reps ?? 0);
  });
});

describe('idealLine on any loads', () => {
  const question = { start: kg(40), reps: 8, weeklyPercent: 10, weeks: 2 };
  const coarse = rackOf('kg', 40, 80);

  it('asks for repetitions that the load here makes as hard as the plan', () => {
    const line = idealLine({ ...question, loads: coarse.loads, rounding: 'down' });
    if (line.kind !== 'line') throw new Error(line.kind);
    // 40 kg where 44 and 48.4 are planned for eight: the share of eight by 40 / 44 and 40 / 48.4
    const share = shareForReps(8);
    expect(line.weeks.map(({ week, reps }) => [week, reps])).toEqual([
      [1, Math.round(repsAtShare((share * 40) / 44))],
      [2, Math.round(repsAtShare((share * 40) / 48.4))],
    ]);
    expect(line.weeks[0]?.reps).toBe(12);
  });

  it('asks for one repetition at least where only much more can be loaded', () => {
    const heavy = rackOf('kg', 80);
    const line = idealLine({ ...question, loads: heavy.loads, rounding: 'nearest' });
    expect(line.kind === 'line' && line.weeks.map(({ reps }) => reps)).toEqual([1, 1]);
  });

  it('goes by the curve of the lift', () => {
    const [slow, fast] = [20, 80].map((kappa) => {
      const curve = { kappa, alpha: 0.5 };
      const line = idealLine({ ...question, loads: coarse.loads, rounding: 'down', curve });
      return line.kind === 'line' ? (line.weeks[0]?.reps ?? 0) : 0;
    });
    expect(slow).toBeLessThan(fast ?? 0);
  });

  it('is none where nothing can be loaded', () => {
    const loads = { kind: 'none', reason: 'no-weights', message: '' } as unknown as ReachableLoads;
    expect(idealLine({ ...question, loads, rounding: 'down' })).toEqual({ kind: 'no-load' });
  });
});

describe('lightWeek', () => {
  const bar = barWith(20, 10, 5, 2.5, 1.25);
  it.each([2, 3, 4, 5, 6, 10])('halves %i sets, 0.4 to 0.7 of them', (sets) => {
    const week = lightWeek({ sets, load: kg(102.5), reps: 5, loads: bar.loads });
    if (week.kind !== 'light-week') throw new Error(week.kind);
    expect(week.setsShare).toBeGreaterThanOrEqual(0.4);
    expect(week.setsShare).toBeLessThanOrEqual(0.7);
    expect(week.percent).toBeGreaterThanOrEqual(10);
    expect(week.percent).toBeLessThanOrEqual(25);
  });

  it('halves the sets upwards and takes the nearest load to so much less', () => {
    const week = lightWeek({ sets: 5, load: kg(100), reps: 8, loads: bar.loads });
    // 15 % off 100 kg are 85 kg, which the bar makes
    expect(week).toMatchObject({ sets: 3, setsShare: 0.6, percent: 15, reps: 8, repsInReserve: 3 });
    expect(week.kind === 'light-week' && week.says).toMatch(/^3 of 5 sets/);
    const more = lightWeek({ sets: 4, load: kg(100), reps: 8, loads: bar.loads, percent: 24 });
    // 76 kg: 75 is nearer than 77.5
    expect(more.kind === 'light-week' && toKg(more.load.load)).toBe(75);
    expect(more).toMatchObject({ sets: 2, percent: 25 });
  });

  it('is none where nothing can be loaded', () => {
    const loads = { kind: 'none', reason: 'no-weights', message: '' } as unknown as ReachableLoads;
    expect(lightWeek({ sets: 2, load: kg(60), reps: 8, loads })).toEqual({ kind: 'no-load' });
  });

  it('keeps a single set and says why', () => {
    const week = lightWeek({ sets: 1, load: kg(60), reps: 8, loads: bar.loads });
    expect(week.kind === 'light-week' && week.sets).toBe(1);
    expect(week.kind === 'light-week' && week.says).toContain('cannot be halved');
  });
});
