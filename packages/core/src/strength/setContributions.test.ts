import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { generalCurve } from './generalCurve.ts';
import { momentsOf } from './grid/momentsOf.ts';
import type { PerformedSet, SetEnd } from './PerformedSet.ts';
import { priorFor } from './priorFor.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';
import { setContributions } from './setContributions.ts';
import { strengthFrom } from './strengthFrom.ts';

const set = (load: number, reps: number, day: number, end: SetEnd = { kind: 'failure' }) =>
  ({ load: kg(load), reps, end, day, secondsPerRep: 3 }) satisfies PerformedSet;

const tell = (sets: readonly PerformedSet[]) =>
  setContributions({
    sets,
    prior: priorFor(generalCurve),
    today: 30,
    cells: { columns: 48, rows: 16 },
  });

describe('setContributions', () => {
  it('tells nothing without sets', () => {
    expect(tell([])).toEqual([]);
  });

  it('lists the sets in the order of their days', () => {
    const told = tell([set(100, 5, 9), set(100, 6, 2)]);
    expect(told.map((one) => one.set.day)).toEqual([2, 9]);
  });

  it('expects what earlier sessions have shown', () => {
    const [, second] = tell([set(100, 5, 0), set(100, 5, 3)]);
    expect(second?.expected.low).toBeLessThanOrEqual(5);
    expect(second?.expected.high).toBeGreaterThanOrEqual(5);
    expect(second?.surprise).toBeGreaterThan(0.5);
    expect(second?.disagrees).toBe(false);
  });

  it('says aloud which set disagrees with the others', () => {
    const told = tell([
      set(100, 5, 0),
      set(100, 6, 3),
      set(100, 5, 7),
      set(100, 14, 10),
      set(100, 6, 14),
    ]);
    expect(told.map(({ disagrees }) => disagrees)).toEqual([false, false, false, true, false]);
    expect(told[3]?.surprise).toBeLessThan(0.01);
  });

  it('says that two sets of one day contradict each other', () => {
    expect(tell([set(100, 5, 0), set(60, 5, 0)]).some(({ disagrees }) => disagrees)).toBe(true);
  });

  it('gives most of the narrowing to the first set and little to a floor that was known', () => {
    const [first, second] = tell([set(100, 5, 0), set(60, 8, 3, { kind: 'more', atLeast: 1 })]);
    expect(first?.narrowed).toBeGreaterThan(0.8);
    expect(Math.abs(second?.narrowed ?? 1)).toBeLessThan(0.05);
  });

  it('finds a stop with a false count of repetitions left surprising too', () => {
    const fives = [0, 3, 6].map((day) => set(100, 5, day));
    const told = tell([...fives, set(100, 4, 9, { kind: 'reserve', repsLeft: 12 })]);
    expect(told.at(-1)?.surprise).toBeLessThan(0.05);
  });

  it('gives a set what the belief about usual strength would lack without it', () => {
    const of = (sets: readonly PerformedSet[], today: number) => {
      const { lnMax, lnKappa, usual } = strengthFrom({
        sets,
        prior: priorFor(generalCurve, { kg: 110, doubt: 0.2 }),
        today,
        cells,
      }) as StrengthPosterior;
      const logs = Float64Array.from(usual, (chance) => Math.log(Math.max(chance, 1e-300)));
      return momentsOf({ columns: lnMax, rows: lnKappa, logs }).columns.sd;
    };
    const cells = { columns: 48, rows: 16 };
    const sets = [set(100, 5, 0), set(90, 8, 3), set(80, 12, 3)];
    const told = setContributions({
      sets,
      prior: priorFor(generalCurve, { kg: 110, doubt: 0.2 }),
      today: 3,
      cells,
    });
    const [first, second, third] = sets as [PerformedSet, PerformedSet, PerformedSet];
    const both = of(sets, 3);
    expect(told.map(({ narrowed }) => narrowed)).toEqual([
      expect.closeTo(1 - of([first], 0) / of([], 0), 6),
      expect.closeTo(1 - both / of([first, third], 3), 6),
      expect.closeTo(1 - both / of([first, second], 3), 6),
    ]);
  });

  it('expects what the belief on the day says, after a layoff or none', () => {
    const expected = (trained?: boolean) => {
      const told = setContributions({
        sets: [set(100, 5, 0), set(80, 9, 210)],
        prior: priorFor(generalCurve),
        today: 210,
        ...(trained === undefined ? {} : { trained }),
      });
      return told[1]?.expected.likely ?? 0;
    };
    // seven months without training take about a quarter: 80 kg from 72 % to nearly all
    expect(expected()).toBe(expected(false));
    expect(expected(true)).toBeGreaterThan(2 * expected(false));
  });

  it('refuses a set after today', () => {
    expect(() => tell([set(100, 5, 31)])).toThrow('setContributions: day must be');
  });
});
