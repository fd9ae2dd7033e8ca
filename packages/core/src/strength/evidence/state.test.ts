import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../basis/index.ts';
import { kg } from '../../load/index.ts';
import type { LogDensity } from '../grid/Axis.ts';
import { axisAround } from '../grid/axisAround.ts';
import { momentsOf } from '../grid/momentsOf.ts';
import type { PerformedSet, SetEnd } from '../PerformedSet.ts';
import type { StrengthPrior } from '../StrengthPosterior.ts';
import { moveToDay } from './moveToDay.ts';
import { openDay } from './openDay.ts';
import { passDays } from './passDays.ts';
import { slipChance } from './slipChance.ts';
import { startingState } from './startingState.ts';

const cells = { columns: 60, rows: 40 };
const lnKappa = { mean: Math.log(40), sd: 0.4 };
const known: StrengthPrior = { lnMax: { mean: Math.log(80), sd: 0.1 }, lnKappa, alpha: 0.5 };
const set = (load: number, day: number, end: SetEnd = { kind: 'failure' }): PerformedSet => ({
  load: kg(load),
  reps: 5,
  end,
  day,
  secondsPerRep: 3,
});
function start(prior: StrengthPrior, sets: readonly PerformedSet[], today = 9) {
  const state = startingState(prior, sets, today, cells);
  if (state === undefined) throw new Error('nothing known');
  return state;
}

/** Standard deviation of ln(one-rep max) in each row. */
function rowsOf({ columns, rows, logs }: LogDensity) {
  return Array.from({ length: rows.count }, (_, row) => {
    const line = logs.slice(row * columns.count, (row + 1) * columns.count);
    const one = { from: 0, step: 1, count: 1 };
    const { sd } = momentsOf({ columns, rows: one, logs: line }).columns;
    return { lnKappa: rows.from + rows.step * row, sd };
  });
}

describe('openDay', () => {
  it('has nothing beyond the plane', () => {
    // an even density over 1 in 40 cells of 0.025: the form of the day is a cell wide
    const columns = { from: 0, step: 0.025, count: 40 };
    const rows = { from: Math.log(40), step: 1, count: 1 };
    const { today } = openDay({ columns, rows, logs: new Float64Array(40) }, 3);
    // of the four cells to either side with weights exp(-n * n / 2) the edge has one half and itself
    const side = [1, 2, 3, 4].reduce((sum, n) => sum + Math.exp(-0.5 * n * n), 0);
    for (const edge of [0, 39]) {
      expect(today.logs[edge]).toBeCloseTo(Math.log((1 + side) / (1 + 2 * side)), 9);
    }
    expect(today.logs[20]).toBeCloseTo(0, 9);
  });
});

describe('startingState', () => {
  it('is the prior on the day of the first set, or today without one', () => {
    const state = start(known, [set(50, 3.7), set(50, 2.5)]);
    expect(state.day).toBe(2);
    const { columns, rows } = momentsOf(state.usual);
    // cut off at 4.5 SD, which takes 0.1 % of the SD
    expect(columns.mean).toBeCloseTo(Math.log(80), 9);
    expect(columns.sd).toBeCloseTo(0.1, 3);
    expect(rows.mean).toBeCloseTo(Math.log(40), 9);
    expect(rows.sd).toBeCloseTo(0.4, 3);
    expect(start(known, [], 9.5).day).toBe(9);
  });

  it('has the form of the day as an error beside it', () => {
    const { usual, today, before, sets } = start(known, []);
    expect(before).toBe(usual);
    expect(sets).toEqual([]);
    // a spread of 0.025 of the day, more where kappa is low: twice as much at half the kappa
    const sd = momentsOf(today).columns.sd;
    expect(sd).toBeGreaterThan(Math.hypot(0.1, 0.025));
    expect(sd).toBeLessThan(Math.hypot(0.1, 0.04));
  });

  it('has a form of the day that moves counts alike in every row', () => {
    // 0.025 at the likely kappa of 40, and in proportion to 40 / kappa within a factor of e
    const { today } = start(known, []);
    for (const { lnKappa: row, sd } of rowsOf(today)) {
      if (Math.abs(row - lnKappa.mean) > 0.95) continue;
      const form = (0.025 * 40) / Math.exp(row);
      expect(sd / Math.hypot(0.1, form)).toBeCloseTo(1, 2);
    }
  });

  it('goes by the heaviest load of the first day when nothing else is known', () => {
    const state = start({ lnKappa, alpha: 0.5 }, [set(50, 2), set(53, 2.9), set(90, 3)]);
    // people choose 53 % of their one-rep max: 100 kg, give or take a factor of e to the 0.8
    expect(state.usual.columns).toEqual(
      axisAround({ mean: Math.log(toOne(100)), sd: 0.8 }, cells.columns),
    );
    // the middle of kappa goes up by its variance, which a first count takes off again
    expect(state.usual.rows).toEqual(
      axisAround({ mean: lnKappa.mean + 0.16, sd: 0.4 }, cells.rows),
    );
    expect(startingState({ lnKappa, alpha: 0.5 }, [], 9, cells)).toBeUndefined();
  });
});

/** 53 / 0.53 in floating point. */
function toOne(value: number): number {
  return (value * 0.53) / 0.53;
}

describe('passDays', () => {
  const { usual } = start(known, []);

  it('is nothing without days', () => {
    expect(passDays(usual, { days: 0, trained: false }, cells)).toBe(usual);
  });

  it('widens both, and takes off what a layoff costs', () => {
    const { columns, rows } = momentsOf(passDays(usual, { days: 114, trained: false }, cells));
    // 100 days beyond the grace: 0.35 * (1 - 1 / e) = 0.22124; half of it in doubt, and 14 days of 2e-4
    expect(columns.mean).toBeCloseTo(Math.log(80) - 0.221_24, 3);
    // at least as wide as at the likely kappa; the scatter at other kappas adds a little
    const plain = Math.hypot(0.1, Math.sqrt(0.0028), 0.110_62);
    expect(columns.sd).toBeGreaterThan(plain);
    expect(columns.sd).toBeLessThan(1.2 * plain);
    // where kappa is low more of the scatter leaves the plane: 0.1 %
    expect(rows.mean).toBeCloseTo(Math.log(40), 2);
    // 114 days of 4e-4
    expect(rows.sd).toBeCloseTo(Math.hypot(0.4, Math.sqrt(0.0456)), 2);
  });

  it('widens strength in every row so that counts scatter alike', () => {
    // 10 days of 2e-4 at the likely kappa of 40; the rows are smeared into each other by 0.063
    const passed = passDays(usual, { days: 10, trained: true }, cells);
    const rows = rowsOf(passed).filter(({ lnKappa: row }) => Math.abs(row - lnKappa.mean) < 0.8);
    for (const { lnKappa: row, sd } of rows) {
      const drift = (Math.sqrt(0.002) * 40) / Math.exp(row);
      expect(sd / Math.hypot(0.1, drift)).toBeCloseTo(1, 1);
    }
    expect(rows[0]?.sd).toBeGreaterThan(1.2 * (rows.at(-1)?.sd ?? 1));
  });

  it('takes nothing off what was trained through', () => {
    const { columns } = momentsOf(passDays(usual, { days: 114, trained: true }, cells));
    expect(columns.mean).toBeCloseTo(Math.log(80), 3);
  });
});

describe('moveToDay', () => {
  it('leaves a day as it is, and opens another with what lies between', () => {
    const state = start(known, [], 9);
    const setting = { trained: false, cells };
    expect(moveToDay(state, 9, setting)).toBe(state);
    const later = moveToDay(state, 123, setting);
    expect(later.day).toBe(123);
    expect(momentsOf(later.usual).columns.mean).toBeCloseTo(Math.log(80) - 0.221_24, 3);
    expect(later.sets).toEqual([]);
  });
});

describe('slipChance', () => {
  it('is the share of the slips among all ways to such a set', () => {
    const axis = (value: number) => ({ from: Math.log(value), step: 1, count: 1 });
    const point = { columns: axis(100), rows: axis(40), logs: new Float64Array(1) };
    // 81 kg: 1 + 40 * 0.19 / 0.9 = 9.4444, spread 1.03856 (as in forEachCount)
    const chance = (reps: number) => {
      const spread = Math.hypot(0.925, 0.472_222);
      const near = (sd: number) =>
        normalBelow((reps + 0.5 - 9.444_444) / sd) - normalBelow((reps - 0.5 - 9.444_444) / sd);
      const right = 0.95 * near(spread);
      return 1 - right / (right + 0.045 * near(4 * spread) + 0.005 / 60);
    };
    for (const reps of [2, 7, 9, 13]) {
      const told = slipChance({ ...set(81, 0), reps }, point, 0.5);
      expect(told).toBeCloseTo(chance(reps), 5);
    }
  });
});
