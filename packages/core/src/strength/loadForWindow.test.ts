import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { forecastReps } from './forecastReps.ts';
import { generalCurve } from './generalCurve.ts';
import { kappaBand } from './kappaBand.ts';
import { loadForWindow } from './loadForWindow.ts';
import type { PerformedSet } from './PerformedSet.ts';
import { priorFor } from './priorFor.ts';
import { shareForReps } from './shareForReps.ts';
import { strengthFrom } from './strengthFrom.ts';
import type { RepWindow } from './windowShares.ts';

const set = (load: number, reps: number, day = 0): PerformedSet => ({
  load: kg(load),
  reps,
  end: { kind: 'failure' },
  day,
  secondsPerRep: 3,
});

const every = (from: number, step: number, count: number) =>
  Array.from({ length: count }, (_, index) => ({ load: kg(from + step * index), place: index }));

function believe(sets: readonly PerformedSet[], today = 0) {
  const cells = { columns: 48, rows: 16 };
  const belief = strengthFrom({ sets, prior: priorFor(generalCurve), today, cells });
  if (belief.kind !== 'posterior') throw new Error(belief.kind);
  return belief;
}

function found(
  sets: readonly PerformedSet[],
  window: RepWindow,
  today = 0,
  choices = every(20, 2.5, 60),
) {
  const answer = loadForWindow({
    posterior: believe(sets, today),
    choices,
    window,
    secondsPerRep: 3,
  });
  if (answer.kind !== 'found') throw new Error(answer.kind);
  return answer;
}

const fives = [set(100, 5), set(100, 6, 3), set(100, 5, 6)];

describe('loadForWindow', () => {
  it('finds by brute force over the forecasts of every load', () => {
    const posterior = believe(fives, 6);
    const { best, all } = found(fives, { minReps: 8, maxReps: 11 }, 6);
    const inside = every(20, 2.5, 60).map(({ load }) => {
      const { chances } = forecastReps(posterior, { load, secondsPerRep: 3 });
      return chances.slice(8, 12).reduce((sum, chance) => sum + chance, 0);
    });
    expect(best.inside).toBeCloseTo(Math.max(...inside), 12);
    expect(best.choice.place).toBe(inside.indexOf(Math.max(...inside)));
    all.forEach((one, index) => {
      expect(one.inside).toBeCloseTo(inside[index] ?? 0, 12);
      expect(one.before + one.inside + one.beyond).toBeCloseTo(1, 9);
    });
  });

  it('repeats the load that has given the window', () => {
    const { best, lighter, heavier } = found(fives, { minReps: 4, maxReps: 6 }, 6);
    expect(toKg(best.choice.load)).toBe(100);
    expect(toKg(lighter?.choice.load ?? kg(0))).toBe(97.5);
    expect(toKg(heavier?.choice.load ?? kg(0))).toBe(102.5);
    expect(best.inside).toBeGreaterThan(0.6);
  });

  it('takes the choices as they come, in any order, and hands back the chosen one', () => {
    const choices = every(60, 5, 12).reverse();
    const answer = loadForWindow({
      posterior: believe(fives, 6),
      choices: [{ load: kg(0), place: -1 }, ...choices],
      window: { minReps: 4, maxReps: 6 },
      secondsPerRep: 3,
    });
    expect(answer.kind === 'found' && choices.includes(answer.best.choice)).toBe(true);
    const [shuffled, sorted] = [
      [100, 85, 115, 95, 105, 90, 110],
      [85, 90, 95, 100, 105, 110, 115],
    ].map((loads) =>
      loadForWindow({
        posterior: believe(fives, 6),
        choices: loads.map((load) => ({ load: kg(load) })),
        window: { minReps: 4, maxReps: 6 },
        secondsPerRep: 3,
      }),
    );
    expect(shuffled).toEqual(sorted);
  });

  it('says what the window asks of the load', () => {
    const { asked, best } = found(fives, { minReps: 5, maxReps: 5 }, 6);
    // general table: 5 repetitions are 90 %
    expect(asked.likely).toBeCloseTo(0.9, 1);
    expect(asked.low).toBeLessThan(asked.likely);
    expect(best.share.likely).toBeCloseTo(asked.likely, 1);
  });

  it('gives a careful first load from one set of 20, and a heavy six as unsure', () => {
    const { best, careful } = found([set(40, 20)], { minReps: 6, maxReps: 6 });
    const first = toKg(careful?.choice.load ?? kg(0));
    expect(first).toBeGreaterThanOrEqual(42.5);
    expect(first).toBeLessThanOrEqual(55);
    expect(first).toBeLessThan(toKg(best.choice.load));
    expect(toKg(best.choice.load)).toBeLessThan(73);
    expect(best.inside).toBeLessThan(0.2);
  });

  it('forgets the set of 20 once there is a real six', () => {
    const six = set(52.5, 6, 3);
    const both = found([set(40, 20), six], { minReps: 5, maxReps: 7 }, 3);
    const alone = found([six], { minReps: 5, maxReps: 7 }, 3);
    const step = Math.abs(toKg(both.best.choice.load) - toKg(alone.best.choice.load));
    expect(step).toBeLessThanOrEqual(2.5);
  });

  it('starts back lighter the longer the break was', () => {
    const starts = [10, 42, 210].map((days) => {
      // by the kilogram: the likely count jumps over a window of one repetition in larger steps
      const all = every(20, 1, 100);
      const { careful } = found([set(100, 5)], { minReps: 5, maxReps: 5 }, days, all);
      return toKg(careful?.choice.load ?? kg(0));
    });
    const ranges = [
      [90, 100],
      [75, 90],
      [50, 75],
    ];
    starts.forEach((start, index) => {
      expect(start).toBeGreaterThanOrEqual(ranges[index]?.[0] ?? 0);
      expect(start).toBeLessThanOrEqual(ranges[index]?.[1] ?? 0);
    });
  });

  it('takes load off for the capacity that is spent', () => {
    const ask = (capacity: number) => {
      const answer = loadForWindow({
        posterior: believe(fives, 6),
        choices: every(20, 2.5, 60),
        window: { minReps: 5, maxReps: 7 },
        secondsPerRep: 3,
        capacity,
      });
      return answer.kind === 'found' ? toKg(answer.best.choice.load) : 0;
    };
    expect(ask(0.8)).toBeGreaterThan(0.75 * ask(1));
    expect(ask(0.8)).toBeLessThan(0.85 * ask(1));
  });

  it('names why no load is near', () => {
    const ask = (choices: readonly { load: ReturnType<typeof kg> }[]) =>
      loadForWindow({
        posterior: believe(fives, 6),
        choices,
        window: { minReps: 5, maxReps: 7 },
        secondsPerRep: 3,
      });
    expect(ask([])).toEqual({ kind: 'no-loads' });
    expect(ask([{ load: kg(-20) }])).toEqual({ kind: 'no-loads' });
    const heavy = ask([{ load: kg(140) }]);
    expect(heavy.kind === 'none-near' && heavy.reason).toBe('all-too-heavy');
    const light = ask([{ load: kg(20) }, { load: kg(30) }]);
    expect(light.kind === 'none-near' && light.reason).toBe('all-too-light');
    expect(light.kind === 'none-near' && light.lighter?.choice.load).toBe(kg(30));
    const gap = ask([{ load: kg(50) }, { load: kg(140) }]);
    expect(gap.kind === 'none-near' && gap.reason).toBe('gap');
  });

  it('refuses a window or a pace that cannot be', () => {
    const ask = (window: RepWindow, secondsPerRep: number) => () =>
      loadForWindow({
        posterior: believe(fives, 6),
        choices: every(20, 5, 3),
        window,
        secondsPerRep,
      });
    expect(ask({ minReps: 7, maxReps: 5 }, 3)).toThrow(/maxReps/);
    expect(ask({ minReps: 5, maxReps: 7 }, 0)).toThrow(/secondsPerRep/);
  });

  it('takes windows from 1 to 200 repetitions', () => {
    const ask = (minReps: number, maxReps: number) => () =>
      found(fives, { minReps, maxReps }, 6, every(20, 40, 3));
    expect(ask(1, 200)).not.toThrow();
    expect(ask(0, 5)).toThrow('loadForWindow: minReps must be');
    expect(ask(201, 201)).toThrow('loadForWindow: minReps must be');
    expect(ask(5, 201)).toThrow('loadForWindow: maxReps must be');
  });

  it('takes the first of loads that are alike', () => {
    const choices = [80, 100, 100, 120].map((load, place) => ({ load: kg(load), place }));
    const { best, lighter, heavier } = found(fives, { minReps: 4, maxReps: 6 }, 6, choices);
    expect([lighter, best, heavier].map((one) => one?.choice.place)).toEqual([0, 1, 2]);
  });

  it('has no neighbour beyond the lightest and the heaviest', () => {
    const { lighter, heavier } = found(fives, { minReps: 4, maxReps: 6 }, 6, every(100, 5, 1));
    expect([lighter, heavier]).toEqual([undefined, undefined]);
  });

  it('calls careful the heaviest load that one set in five at most fails early', () => {
    const { all, careful } = found(fives, { minReps: 5, maxReps: 6 }, 6);
    expect(careful?.before).toBeLessThanOrEqual(0.2);
    const heavier = all[all.indexOf(careful as (typeof all)[number]) + 1];
    expect(heavier?.before).toBeGreaterThan(0.2);
    expect(found(fives, { minReps: 5, maxReps: 6 }, 6, every(100, 5, 1)).careful).toBeUndefined();
  });

  it('asks what the middle of the window does, over the kappas at the pace, of the capacity', () => {
    const posterior = believe(fives, 6);
    const window = { minReps: 6, maxReps: 9 };
    for (const [level, capacity] of [
      [0.8, 1],
      [0.5, 0.8],
    ] as const) {
      const more = level === 0.8 ? {} : { level, capacity };
      const question = { posterior, choices: every(20, 10, 9), window, secondsPerRep: 6, ...more };
      const answer = loadForWindow(question);
      if (answer.kind === 'no-loads') throw new Error(answer.kind);
      // kappa falls as the pace to the 0.55
      const kappas = kappaBand(posterior, level);
      const at = (kappa: number) =>
        shareForReps(7.5, { kappa: kappa * 2 ** -0.55, alpha: posterior.alpha }, capacity);
      expect(answer.asked.low).toBeCloseTo(at(kappas.low), 12);
      expect(answer.asked.likely).toBeCloseTo(at(kappas.likely), 12);
      expect(answer.asked.high).toBeCloseTo(at(kappas.high), 12);
      expect([answer.asked.level, answer.all[0]?.reps.level]).toEqual([level, level]);
    }
  });

  it('names the nearest load on each side of a window that none gives', () => {
    const ask = (...loads: readonly number[]) => {
      const answer = loadForWindow({
        posterior: believe(fives, 6),
        choices: loads.map((load) => ({ load: kg(load) })),
        window: { minReps: 5, maxReps: 7 },
        secondsPerRep: 3,
      });
      if (answer.kind !== 'none-near') throw new Error(answer.kind);
      return [answer.lighter, answer.heavier].map((one) => one && toKg(one.choice.load));
    };
    expect(ask(30, 50, 140, 160)).toEqual([50, 140]);
    expect(ask(140, 160)).toEqual([undefined, 140]);
    expect(ask(30, 50)).toEqual([50, undefined]);
  });
});
