import { describe, expect, it } from 'vitest';
import { findExercise } from '../anatomy/index.ts';
import { rangeErrorOf } from '../basis/rangeErrorOf.testing.ts';
import { kg } from '../load/index.ts';
import { generalCurve, priorFor, strengthFrom } from '../strength/index.ts';
import { carryOver } from './carryOver.ts';
import { chanceOfRate } from './chanceOfRate.ts';
import { comeback } from './comeback.ts';
import { barWith, sessionOn } from './gym.testing.ts';
import { idealLine } from './idealLine.ts';
import { lightWeek } from './lightWeek.ts';
import type { NextLoadQuestion } from './NextLoadQuestion.ts';
import { nextLoad } from './nextLoad.ts';
import { repsBeforeStep } from './repsBeforeStep.ts';
import { repsWithOtherLoad } from './repsWithOtherLoad.ts';
import { strengthMeasure } from './review/strengthMeasure.ts';
import { sideGap } from './sideGap.ts';
import { strengthTrend } from './strengthTrend.ts';

const bar = barWith(20, 10, 5, 2.5, 1.25);
const nothing = kg(0);
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const session = sessionOn('2026-03-09', kilos(100), [6]);
const window = { minReps: 5, maxReps: 8 };
const next = (change: Partial<NextLoadQuestion>) => () =>
  nextLoad({ ...bar, sessions: [session], window, on: '2026-03-12', ...change });
const light = (change: object) => () =>
  lightWeek({ sets: 4, load: kg(60), reps: 8, loads: bar.loads, ...change });
const line = (change: object) => () =>
  idealLine({
    start: kg(60),
    reps: 8,
    weeklyPercent: 2.5,
    weeks: 4,
    loads: bar.loads,
    rounding: 'down',
    ...change,
  });
const back = (change: object) => () =>
  comeback({ old: { load: kg(100), reps: 5 }, layoffDays: 40, loads: bar.loads, ...change });
const sides = (left: number, right: number) => () =>
  sideGap([sessionOn('2026-03-09', kilos(20), [1], { sides: { left, right } })]);
const trend = strengthTrend(
  [2, 5, 9].map((day) => sessionOn(`2026-03-0${day}`, kilos(60), [day + 3])),
);
const rate = (percent: number) => () =>
  chanceOfRate(trend as Extract<typeof trend, { kind: 'trend' }>, percent);
const carried = (low: number, high: number) => () => {
  const row = findExercise('cable-row');
  const set = { load: kg(60), reps: 8, end: { kind: 'failure' }, day: 0 } as const;
  const posterior = strengthFrom({ sets: [set], prior: priorFor(generalCurve), today: 0 });
  if (row.kind !== 'found' || posterior.kind !== 'posterior') throw new Error('nothing known');
  return carryOver({ from: row.exercise, to: row.exercise, posterior, ratio: { low, high } });
};
const other = (load: number, reps: number, there: number) => () =>
  repsWithOtherLoad({ load: kg(load), reps }, kg(there));

describe('a mistake in code', () => {
  it.each([
    ['lightWeek: sets', light({ sets: 0 })],
    ['lightWeek: sets', light({ sets: 51 })],
    ['lightWeek: load in steps', light({ load: nothing })],
    ['lightWeek: reps', light({ reps: 201 })],
    ['lightWeek: percent', light({ percent: 9.9 })],
    ['lightWeek: percent', light({ percent: 25.1 })],
    [
      'strengthMeasure: load in steps',
      () => strengthMeasure({ ...session.sets[0], load: nothing }, generalCurve),
    ],
    ['strengthTrend: level', () => strengthTrend([], { level: 0.0099 })],
    ['strengthTrend: level', () => strengthTrend([], { level: 1 })],
    ['sideGap: left', sides(-1, 5)],
    ['sideGap: right', sides(5, -1)],
    ['carryOver: ratio.low', carried(0.049, 1)],
    ['carryOver: ratio.high', carried(1, 20.1)],
    ['carryOver: ratio.high', carried(1.2, 1.05)],
    ['idealLine: start in steps', line({ start: nothing })],
    ['idealLine: reps', line({ reps: 101 })],
    ['idealLine: weeklyPercent', line({ weeklyPercent: -20.1 })],
    ['idealLine: weeklyPercent', line({ weeklyPercent: 20.1 })],
    ['idealLine: weeks', line({ weeks: 0 })],
    ['idealLine: weeks', line({ weeks: 105 })],
    ['comeback: old.load in steps', back({ old: { load: nothing, reps: 5 } })],
    ['comeback: old.reps', back({ old: { load: kg(100), reps: 0 } })],
    ['comeback: layoffDays', back({ layoffDays: -1 })],
    ['comeback: layoffDays', back({ layoffDays: Number.POSITIVE_INFINITY })],
    ['nextLoad: minReps', next({ window: { minReps: 0, maxReps: 5 } })],
    ['nextLoad: maxReps', next({ window: { minReps: 6, maxReps: 5 } })],
    ['nextLoad: maxReps', next({ window: { minReps: 6, maxReps: 201 } })],
    ['nextLoad: repsInReserve', next({ repsInReserve: 21 })],
    ['nextLoad: days since the last session', next({ on: '2026-03-08' })],
    ['repsBeforeStep: from in steps', () => repsBeforeStep(nothing, kg(45), 5)],
    ['repsBeforeStep: to in steps', () => repsBeforeStep(kg(45), kg(45), 5)],
    ['repsWithOtherLoad: usual.load in steps', other(0, 8, 20)],
    ['repsWithOtherLoad: usual.reps', other(30, 101, 20)],
    ['repsWithOtherLoad: other in steps', other(30, 8, 0)],
    ['chanceOfRate: percentPerWeek', rate(-100)],
  ])('is named: %s', (named, call) => {
    expect(rangeErrorOf(call)).toBe(named);
  });

  it.each([
    ['a light week of 50 sets', light({ sets: 50 })],
    ['a light week a tenth lighter', light({ percent: 10 })],
    ['a light week a quarter lighter', light({ percent: 25 })],
    ['sides without a repetition', sides(0, 0)],
    ['a line of two years', line({ weeks: 104, weeklyPercent: 0 })],
    ['a line downwards', line({ weeklyPercent: -20 })],
    ['a break of no days', back({ layoffDays: 0 })],
    ['a single set of one', back({ old: { load: kg(100), reps: 1 } })],
    ['the day of the last session', next({ on: '2026-03-09' })],
    ['a window of one count', next({ window: { minReps: 200, maxReps: 200 } })],
    ['a ratio that is a number', carried(20, 20)],
    ['a fall of nearly all', rate(-99.9)],
  ])('is not %s', (_, call) => {
    expect(call).not.toThrow();
  });
});
