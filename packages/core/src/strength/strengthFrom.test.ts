import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { generalCurve } from './generalCurve.ts';
import { kappaBand } from './kappaBand.ts';
import { oneRepMaxKg } from './oneRepMaxKg.ts';
import type { PerformedSet, SetEnd } from './PerformedSet.ts';
import { priorFor } from './priorFor.ts';
import type { StrengthPosterior, StrengthPrior } from './StrengthPosterior.ts';
import { strengthFrom } from './strengthFrom.ts';

const failure: SetEnd = { kind: 'failure' };

function set(load: number, reps: number, more: Partial<PerformedSet> = {}): PerformedSet {
  return { load: kg(load), reps, end: failure, day: 0, secondsPerRep: 3, ...more };
}

function believe(
  sets: readonly PerformedSet[],
  today = 0,
  prior: StrengthPrior = priorFor(generalCurve),
): StrengthPosterior {
  const belief = strengthFrom({ sets, prior, today });
  if (belief.kind !== 'posterior') throw new Error(belief.kind);
  return belief;
}

const width = (belief: StrengthPosterior) => {
  const { low, high } = oneRepMaxKg(belief);
  return Math.log(high / low);
};

describe('strengthFrom', () => {
  it('knows nothing without a set and without a prior for the load', () => {
    const prior = priorFor(generalCurve);
    expect(strengthFrom({ sets: [], prior, today: 3 })).toEqual({ kind: 'nothing-known' });
  });

  it('keeps a prior as it is on the day it holds', () => {
    const belief = believe([], 0, priorFor(generalCurve, { kg: 80, doubt: 0.1 }));
    expect(belief.binding).toBe('prior-only');
    const { low, likely, high } = oneRepMaxKg(belief);
    // a normal logarithm: 80 * exp(-+ 1.28155 * 0.1)
    expect(likely).toBeCloseTo(80, 1);
    expect(low).toBeCloseTo(70.376, 1);
    expect(high).toBeCloseTo(90.94, 1);
  });

  it('gives endurance back unchanged after one count, which says nothing about it', () => {
    const { likely } = kappaBand(believe([set(40, 8)]));
    expect(Math.abs(likely - generalCurve.kappa)).toBeLessThan(1);
  });

  it('learns endurance from counts at two loads', () => {
    // 100 kg for 3 and 80 kg for 14 against 100 kg for 3 and 80 kg for 9
    const lasting = kappaBand(believe([set(100, 3), set(80, 14)]));
    const fading = kappaBand(believe([set(100, 3), set(80, 8)]));
    expect(lasting.low).toBeGreaterThan(fading.high);
  });

  it('takes a set stopped with some left as stronger than it was told', () => {
    const told = oneRepMaxKg(believe([set(40, 8, { end: { kind: 'reserve', repsLeft: 3 } })]));
    const failed = oneRepMaxKg(believe([set(40, 11)]));
    expect(told.likely).toBeGreaterThan(failed.likely);
    expect(told.high - told.low).toBeGreaterThan(failed.high - failed.low);
  });

  it('widens with the distance from failure', () => {
    const widths = [1, 3, 6, 10].map((repsLeft) =>
      width(believe([set(40, 12 - repsLeft, { end: { kind: 'reserve', repsLeft } })])),
    );
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
  });

  it('takes a target that was reached as a floor', () => {
    const belief = believe([set(40, 8, { end: { kind: 'more', atLeast: 1 } })]);
    expect(belief.binding).toBe('floor-only');
    expect(oneRepMaxKg(belief).low).toBeGreaterThan(oneRepMaxKg(believe([set(40, 8)])).low);
    expect(oneRepMaxKg(belief).high).toBeGreaterThan(100);
  });

  it('takes a single that failed as a ceiling', () => {
    const belief = believe([set(100, 0)]);
    expect(belief.binding).toBe('ceiling-only');
    expect(oneRepMaxKg(belief).high).toBeLessThan(101);
    expect(oneRepMaxKg(belief).low).toBeLessThan(50);
    const both = believe([set(100, 0), set(90, 1)]);
    expect(both.binding).toBe('both-sides');
    expect(oneRepMaxKg(both).low).toBeGreaterThan(85);
    expect(oneRepMaxKg(both).high).toBeLessThan(101);
  });

  it('believes less of a single, and of any set, whose pace nobody knows', () => {
    const { secondsPerRep: _, ...unknown } = set(100, 1);
    expect(width(believe([unknown]))).toBeGreaterThan(1.3 * width(believe([set(100, 1)])));
    const { secondsPerRep: __, ...unknownTen } = set(100, 10);
    expect(width(believe([unknownTen]))).toBeGreaterThan(1.1 * width(believe([set(100, 10)])));
  });

  it('answers a set of forty widely', () => {
    expect(width(believe([set(20, 40)]))).toBeGreaterThan(0.6);
    expect(width(believe([set(20, 8)]))).toBeLessThan(0.3);
  });

  it('answers sets that contradict each other widely, and not in the middle of nowhere', () => {
    const belief = believe([set(100, 5), set(60, 5)]);
    const { low, high } = oneRepMaxKg(belief);
    // each alone: about 111 and 67 kg
    expect(low).toBeLessThan(85);
    expect(high).toBeGreaterThan(105);
    expect(width(belief)).toBeGreaterThan(3 * width(believe([set(100, 5), set(100, 5)])));
  });

  it('is hardly moved by one wrong note among five', () => {
    const days = [0, 3, 7, 10, 14];
    const right = days.map((day) => set(100, 5, { day }));
    const wrong = right.with(2, set(100, 15, { day: 7 }));
    const ratio = oneRepMaxKg(believe(wrong, 14)).likely / oneRepMaxKg(believe(right, 14)).likely;
    expect(Math.abs(ratio - 1)).toBeLessThan(0.05);
  });

  it('narrows with every set that agrees', () => {
    // 5 and 6 differ by the error of a repeated count, 0.7
    const widths = [1, 2, 4, 8].map((count) =>
      width(
        believe(
          Array.from({ length: count }, (_, day) => set(100, 5 + (day % 2), { day: 3 * day })),
          24,
        ),
      ),
    );
    for (const [index, one] of widths.slice(1).entries())
      expect(one).toBeLessThan(widths[index] ?? 0);
  });

  it('sees through a tired set when the capacity left is told', () => {
    const tired = oneRepMaxKg(believe([set(40, 4, { capacity: 0.8 })]));
    const fresh = oneRepMaxKg(believe([set(40, 4)]));
    expect(tired.likely).toBeGreaterThan(1.15 * fresh.likely);
  });

  it('widens with the days and falls with a layoff', () => {
    const bench = [set(100, 5)];
    const after = [0, 10, 42, 210].map((today) => oneRepMaxKg(believe(bench, today)));
    const likely = after.map((band) => band.likely);
    const low = after.map((band) => band.low);
    expect(low).toEqual([...low].sort((a, b) => b - a));
    // the middle of a lopsided belief moves up by half a percent at most as it widens
    for (const [index, one] of likely.slice(1).entries()) {
      expect(one).toBeLessThan(1.005 * (likely[index] ?? 0));
    }
    // little in ten days, about a tenth in six weeks, a quarter or more in seven months
    expect((likely[1] ?? 0) / (likely[0] ?? 0)).toBeGreaterThan(0.98);
    expect((likely[2] ?? 0) / (likely[0] ?? 0)).toBeCloseTo(0.92, 1);
    expect((likely[3] ?? 0) / (likely[0] ?? 0)).toBeLessThan(0.78);
    const widths = after.map(({ low, high }) => Math.log(high / low));
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
  });

  it('does not fall over a break that was trained through', () => {
    const belief = strengthFrom({
      sets: [set(100, 5)],
      prior: priorFor(generalCurve),
      today: 210,
      trained: true,
    });
    const now = oneRepMaxKg(believe([set(100, 5)]));
    const later = belief.kind === 'posterior' ? oneRepMaxKg(belief) : now;
    // 2 %: the middle of a lopsided belief moves up as it widens
    expect(Math.abs(later.likely / now.likely - 1)).toBeLessThan(0.02);
    expect(later.low).toBeLessThan(now.low);
  });

  it('knows today better after a set of today than the form of another day', () => {
    const sets = Array.from({ length: 6 }, (_, index) => set(100, 5, { day: index * 3 }));
    const todays = oneRepMaxKg(believe(sets, 15), 0.8, 'today');
    const tomorrows = oneRepMaxKg(believe(sets, 16), 0.8, 'today');
    expect(todays.high - todays.low).toBeLessThan(tomorrows.high - tomorrows.low);
  });

  it('is plain data that survives a file', () => {
    const belief = believe([set(40, 8)]);
    expect(JSON.parse(JSON.stringify(belief))).toEqual(belief);
  });

  it('refuses what no one can have done', () => {
    const prior = priorFor(generalCurve);
    const refuse = (bad: PerformedSet) => () => strengthFrom({ sets: [bad], prior, today: 0 });
    expect(refuse(set(-35, 10))).toThrow('strengthFrom: load must be');
    expect(refuse(set(40, -1))).toThrow(/reps/);
    expect(refuse(set(40, 8, { day: 1 }))).toThrow(/day/);
    expect(refuse(set(40, 8, { capacity: 0 }))).toThrow(/capacity/);
  });
});
