import { describe, expect, it } from 'vitest';
import { kg } from '../../load/index.ts';
import type { Moments } from '../grid/Axis.ts';
import { momentsOf } from '../grid/momentsOf.ts';
import type { PerformedSet, SetEnd } from '../PerformedSet.ts';
import { learnSession } from './learnSession.ts';
import { startingState } from './startingState.ts';

const cells = { columns: 96, rows: 32 };
const set = (load: number, reps: number, end: SetEnd = { kind: 'failure' }): PerformedSet => ({
  load: kg(load),
  reps,
  end,
  day: 0,
  secondsPerRep: 3,
});
const times = (count: number, one: PerformedSet) => Array.from({ length: count }, () => one);
const more: SetEnd = { kind: 'more', atLeast: 1 };

/** From a one-rep max of 100 kg and a kappa of 38, with these standard deviations of the logarithms. */
function before(max: number, kappa = 0.45, fresh = cells) {
  const prior = {
    lnMax: { mean: Math.log(100), sd: max },
    lnKappa: { mean: Math.log(38), sd: kappa },
    alpha: 0.5,
  };
  const start = startingState(prior, [], 0, fresh);
  if (start === undefined) throw new Error('nothing known');
  return start;
}

describe('learnSession', () => {
  it.each([
    ['one set', [set(100, 5)], 0.8],
    ['a floor', [set(40, 8, more)], 0.8],
    ['a ceiling', [set(150, 0)], 0.8],
    ['one set after next to nothing', [set(100, 5)], 2],
    ['heavy and light after next to nothing', [set(100, 3), set(70, 20)], 2],
    ['endurance alone', times(6, set(60, 30)), 0.03, 1],
  ] as const)('lays a plane that fits what is believed: %s', (_, sets, max, kappa?: number) => {
    const { usual } = learnSession(before(max, kappa).before, sets, 0.5, cells);
    expect([usual.columns.count, usual.rows.count]).toEqual([96, 32]);
    const { columns, rows } = momentsOf(usual);
    for (const [axis, mean, sd] of [
      // the form of the day is on top
      [usual.columns, columns.mean, Math.hypot(columns.sd, 0.025)],
      [usual.rows, rows.mean, rows.sd],
    ] as const) {
      // 4.5 SD to both sides, as far as the rounds before know them
      const half = (axis.step * axis.count) / 2;
      expect(half / sd / 4.5).toBeGreaterThan(0.95);
      expect(half / sd / 4.5).toBeLessThan(1.1);
      const middle = axis.from - axis.step / 2 + half;
      expect(Math.abs(middle - mean)).toBeLessThan(0.05 * sd);
    }
  });

  it.each([
    ['one set after next to nothing', [set(100, 5)], 2],
    ['four sets that agree', times(4, set(100, 5)), 0.8],
    ['a floor of one repetition', [set(100, 1, more)], 0.8],
    ['a ceiling', [set(80, 0)], 0.8],
  ] as const)('is as on a plane twice as fine: %s', (_, sets, max) => {
    const fine = { columns: 192, rows: 64 };
    const one = learnSession(before(max).before, sets, 0.5, cells);
    const other = learnSession(before(max, 0.45, fine).before, sets, 0.5, fine);
    for (const when of ['usual', 'today'] as const) {
      const [a, b] = [momentsOf(one[when]), momentsOf(other[when])];
      // interval ends are promised within half a percent; the middle takes a tenth of it
      expect(Math.abs(a.columns.mean - b.columns.mean)).toBeLessThan(0.0005);
      expect(Math.abs(a.columns.sd / b.columns.sd - 1)).toBeLessThan(0.01);
      expect(Math.abs(a.rows.mean - b.rows.mean)).toBeLessThan(0.002);
    }
  });

  it('finds a single in a coarse and wide plane, where it is narrower than a cell', () => {
    // 9 * 2 / 24 = 0.75 in the first round; one repetition more or less is 0.025 to 0.03
    const coarse = { columns: 48, rows: 16 };
    const fine = { columns: 96, rows: 32 };
    for (const load of [60, 90, 120]) {
      const [a, b] = [coarse, fine].map(
        (fresh) =>
          momentsOf(learnSession(before(2, 0.45, fresh).before, [set(load, 1)], 0.5, fresh).usual)
            .columns,
      ) as [Moments, Moments];
      expect(Math.abs(a.mean - b.mean)).toBeLessThan(0.01 * b.sd);
      expect(Math.abs(a.sd / b.sd - 1)).toBeLessThan(0.02);
    }
  });

  it('believes what a count says, by the curve', () => {
    // 1 + 38 * 0.1 / sqrt(0.9) is 5: 100 kg are about 90 % of the one-rep max, usual and today; at
    // half the kappa they are 80 %, so the mean lies a little higher
    const { usual, today } = learnSession(before(0.8).before, [set(100, 5)], 0.5, cells);
    for (const learned of [usual, today]) {
      const { columns, rows } = momentsOf(learned);
      expect(Math.abs(columns.mean - Math.log(100 / 0.9))).toBeLessThan(0.05);
      expect(columns.sd).toBeLessThan(0.1);
      expect(Math.abs(rows.mean - Math.log(38))).toBeLessThan(0.3);
    }
  });

  it('leaves the usual strength and that of the day as they were when nothing was done', () => {
    const start = before(0.05);
    const { usual, today } = learnSession(start.before, [], 0.5, cells);
    for (const [learned, known] of [
      [usual, start.usual],
      [today, start.today],
    ] as const) {
      const [a, b] = [momentsOf(learned), momentsOf(known)];
      expect(a.columns.mean).toBeCloseTo(b.columns.mean, 4);
      // each plane is cut off at 4.5 SD
      expect(a.columns.sd / b.columns.sd).toBeCloseTo(1, 2);
      expect(a.rows.sd / b.rows.sd).toBeCloseTo(1, 2);
    }
  });
});
