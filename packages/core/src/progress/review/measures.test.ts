import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kg } from '../../load/index.ts';
import { generalCurve, shareForReps } from '../../strength/index.ts';
import type { SessionSet } from '../LiftSession.ts';
import { fitLine, type TrendPoint } from './fitLine.ts';
import { strengthMeasure } from './strengthMeasure.ts';

const set: SessionSet = { load: kg(100), shown: kg(100), reps: 8 };
const lnShare = (reps: number) => Math.log(shareForReps(reps, generalCurve));

describe('strengthMeasure', () => {
  const measure = (change: Partial<SessionSet>) =>
    strengthMeasure({ ...set, ...change }, generalCurve);

  it.each<[string, Partial<SessionSet>, number]>([
    ['failure', { end: { kind: 'failure' } }, 8],
    ['an end that was not noted', {}, 8],
    // people have 0.95 more left than they say
    ['two left', { end: { kind: 'reserve', repsLeft: 2 } }, 10.95],
    ['none left, as named', { end: { kind: 'reserve', repsLeft: 0 } }, 8.95],
    ['three left at least', { end: { kind: 'more', atLeast: 3 } }, 11],
    ['no repetition at all', { reps: 0 }, 1],
  ])('reads %s off the curve', (_, change, reps) => {
    expect(measure(change).lnMax).toBeCloseTo(Math.log(100) - lnShare(reps), 12);
  });

  it('is as sure as a count can be repeated, along the slope of the curve', () => {
    // 0.5 + 0.045 · 8 repetitions
    const slope = lnShare(8.5) - lnShare(7.5);
    expect(measure({}).variance).toBeCloseTo((slope * 0.86) ** 2, 12);
    // what was left adds 0.7 + 0.25 · 2, and 0.5 + 0.045 · 10.95 is the count
    const left = lnShare(11.45) - lnShare(10.45);
    expect(measure({ end: { kind: 'reserve', repsLeft: 2 } }).variance).toBeCloseTo(
      left ** 2 * (0.99275 ** 2 + 1.2 ** 2),
      12,
    );
    // failure as named adds nothing to the count of 8.95
    const none = lnShare(9.45) - lnShare(8.45);
    expect(measure({ end: { kind: 'reserve', repsLeft: 0 } }).variance).toBeCloseTo(
      (none * 0.90275) ** 2,
      12,
    );
  });

  it('takes the slope from one side where there is no other, below one repetition and a half', () => {
    expect(measure({ reps: 1 }).variance).toBeCloseTo(((lnShare(1.5) / 0.5) * 0.545) ** 2, 12);
    const few = { reps: 0, end: { kind: 'reserve', repsLeft: 0.25 } } as const;
    // 0.25 and 0.95 left are 1.2: from 1 to 1.7
    const spread = Math.hypot(0.5 + 0.045 * 1.2, 0.7 + 0.25 * 0.25);
    expect(measure(few).variance).toBeCloseTo(((lnShare(1.7) / 0.7) * spread) ** 2, 12);
  });
});

/** The slope of ln(one-rep max) a day has a standard deviation of 1 % a week before anything is seen. */
const BEFORE = 0.01 / 7;
const points = fc.array(
  fc.record({
    day: fc.integer({ min: 0, max: 200 }),
    y: fc.double({ min: 3, max: 5, noNaN: true }),
    variance: fc.double({ min: 1e-4, max: 1e-2, noNaN: true }),
  }),
  { minLength: 3, maxLength: 8 },
);
/** What the fit makes smallest: weighted squares about the line, and the square of its slope. */
const cost = (list: readonly TrendPoint[], at0: number, slope: number) =>
  list.reduce((sum, { day, y, variance }) => sum + (y - at0 - slope * day) ** 2 / variance, 0) +
  (slope / BEFORE) ** 2;

describe('fitLine', () => {
  it('has no better line near it', () => {
    fc.assert(
      fc.property(
        points,
        fc.constantFrom(-1, 0, 1),
        fc.constantFrom(-1, 0, 1),
        (list, up, turn) => {
          const { centre, level, slope } = fitLine(list);
          const best = cost(list, level - slope * centre, slope);
          const other = slope + turn * 1e-4;
          expect(cost(list, level + up * 1e-3 - other * centre, other)).toBeGreaterThanOrEqual(
            best - 1e-9 * best,
          );
        },
      ),
    );
  });

  it('is as sure as its points, drawn by what was held likely before', () => {
    // on a flat line there is no misfit: 3 points of 0.01 about day 10
    const flat = [0, 10, 20].map((day) => ({ day, y: 4, variance: 1e-4 }));
    const { levelSd, slopeSd, centre } = fitLine(flat);
    expect(centre).toBe(10);
    expect(levelSd).toBeCloseTo(0.01 / Math.sqrt(3), 12);
    expect(slopeSd).toBeCloseTo(1 / Math.sqrt(200 / 1e-4 + 700 ** 2), 12);
  });

  it('is less sure by the root of the misfit a degree of freedom, and never surer', () => {
    // off by 0.03, -0.06, 0.03 where 0.01 was expected: 9 + 36 + 9 over 4 - 2 with a fourth point on the line
    const bent = [
      { day: 0, y: 4.03, variance: 1e-4 },
      { day: 10, y: 3.94, variance: 1e-4 },
      { day: 10, y: 4, variance: 1e-4 },
      { day: 20, y: 4.03, variance: 1e-4 },
    ];
    expect(fitLine(bent).levelSd).toBeCloseTo(Math.sqrt(54 / 2) * (0.01 / 2), 12);
    expect(fitLine(bent).slopeSd).toBeCloseTo(
      Math.sqrt(54 / 2) / Math.sqrt(200 / 1e-4 + 700 ** 2),
      12,
    );
  });
});
