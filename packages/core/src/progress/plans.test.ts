import { describe, expect, it } from 'vitest';
import { nearestLoad } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { enduranceCurves } from '../strength/index.ts';
import { barWith, rackOf, sessionOn } from './gym.testing.ts';
import { idealLine } from './idealLine.ts';
import { lightWeek } from './lightWeek.ts';
import { repsBeforeStep } from './repsBeforeStep.ts';
import { repsWithOtherLoad } from './repsWithOtherLoad.ts';
import { sideGap } from './sideGap.ts';

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

describe('the smallest plate is 2.5 kg', () => {
  it('makes 60 of 62 kg', () => {
    const choice = nearestLoad(barWith(20, 15, 10, 5, 2.5).loads, kg(62));
    expect(choice.kind !== 'none' && toKg(choice.chosen.load)).toBe(60);
  });

  it('asks for 9 or 10 with 40 before 45 for five, on any pressing curve', () => {
    for (const curve of [undefined, enduranceCurves.press]) {
      const { aim } = repsBeforeStep(kg(40), kg(45), 5, curve);
      expect(aim).toBeGreaterThanOrEqual(9);
      expect(aim).toBeLessThanOrEqual(10);
    }
  });

  it('has no count for twice the load: 46 by a straight-line equation, 36 by the curve', () => {
    const { reps, beyondCounting } = repsBeforeStep(kg(2.5), kg(5), 8);
    expect(beyondCounting).toBe(true);
    // the straight-line equation w (1 + r / 30): (2 (1 + 8 / 30) - 1) · 30 = 46, inside the band
    expect(reps.low).toBeLessThan(46);
    expect(reps.high).toBeGreaterThan(46);
  });
});

describe('repsWithOtherLoad', () => {
  it('does not let 20 kg stand in for 30 kg for eight', () => {
    const { reps, standing, ways, tag } = repsWithOtherLoad(
      { load: kg(30), reps: 8 },
      kg(20),
      enduranceCurves.press,
    );
    expect(standing).toBe('too-light');
    // two published equations give 17 and 27
    expect(reps.likely).toBeGreaterThanOrEqual(17);
    expect(reps.likely).toBeLessThanOrEqual(27);
    expect(ways.length).toBeGreaterThanOrEqual(3);
    expect(tag).toBe('travel');
  });

  it('gives the usual repetitions with the usual load, and none with one that is too heavy', () => {
    const same = repsWithOtherLoad({ load: kg(30), reps: 8 }, kg(30));
    expect(same.reps.likely).toBeCloseTo(8, 9);
    expect(same.standing).toBe('stands-in');
    expect(repsWithOtherLoad({ load: kg(30), reps: 8 }, kg(60)).reps.likely).toBe(0);
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

  it('keeps a single set and says why', () => {
    const week = lightWeek({ sets: 1, load: kg(60), reps: 8, loads: bar.loads });
    expect(week.kind === 'light-week' && week.sets).toBe(1);
    expect(week.kind === 'light-week' && week.says).toContain('cannot be halved');
  });
});

describe('sideGap', () => {
  const session = (day: number, left: number, right: number) =>
    sessionOn(`2026-03-0${day}`, { value: 70, unit: 'lb' }, [Math.min(left, right)], {
      sides: { left, right },
    });

  it('calls a stable gap of two repetitions ordinary', () => {
    const gap = sideGap([session(2, 8, 10), session(5, 8, 10), session(9, 8, 10)]);
    expect(gap).toMatchObject({ kind: 'gap', weaker: 'left', reps: 2, standing: 'ordinary' });
  });

  it('flags a gap that grows', () => {
    const gap = sideGap([session(2, 9, 10), session(5, 8, 10), session(9, 7, 11)]);
    expect(gap).toMatchObject({ kind: 'gap', standing: 'growing' });
  });

  it('flags a large one, and the other side', () => {
    expect(sideGap([session(2, 20, 4)])).toMatchObject({ weaker: 'right', standing: 'large' });
  });
});
