import { describe, expect, it } from 'vitest';
import { type Exercise, findExercise } from '../anatomy/index.ts';
import { kg } from '../load/index.ts';
import {
  enduranceCurves,
  forecastReps,
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  strengthFrom,
} from '../strength/index.ts';
import { carryOver } from './carryOver.ts';
import { expectedAgainstDone } from './expectedAgainstDone.ts';
import { barWith, sessionOn } from './gym.testing.ts';
import { nextLoad } from './nextLoad.ts';
import { performedSets } from './performedSets.ts';

const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const named = (id: string): Exercise => {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`${id} has left the list of exercises`);
  return found.exercise;
};
const beliefOf = (sets: readonly PerformedSet[], today: number) => {
  const belief = strengthFrom({ sets, prior: priorFor(enduranceCurves.pull), today });
  if (belief.kind !== 'posterior') throw new Error('nothing known');
  return belief;
};
const done = (load: number, reps: number, day: number): PerformedSet => ({
  load: kg(load),
  reps,
  end: { kind: 'failure' },
  day,
});

describe('performedSets', () => {
  const exercise = named('cable-row');
  const end = { kind: 'failure' } as const;

  it('finds later sets tired, the more so the shorter the rest', () => {
    const capacities = [60, 180].map((restSeconds) => {
      const session = sessionOn('2026-03-02', kilos(60), [8, 5], { end, restSeconds });
      return performedSets([session], { exercise }).map(({ capacity }) => capacity);
    });
    expect(capacities[0]?.[0]).toBeUndefined();
    const [short = 0, long = 0] = capacities.map((pair) => pair[1]);
    expect(short).toBeLessThan(long);
    expect(long).toBeLessThan(1);
  });

  it('leaves out later sets whose rest was not noted', () => {
    const session = sessionOn('2026-03-02', kilos(60), [8, 5, 4], { end });
    expect(performedSets([session], { exercise })).toHaveLength(1);
  });

  it('takes the pace from the tempo, and an end that was not noted as a floor', () => {
    const session = sessionOn('2026-03-02', kilos(60), [8], { tempo: '4-0-1-0' });
    expect(performedSets([session], { exercise })).toEqual([
      {
        load: kg(60),
        reps: 8,
        end: { kind: 'more', atLeast: 0 },
        day: session.day,
        secondsPerRep: 5,
      },
    ]);
  });
});

describe('expectedAgainstDone', () => {
  const belief = beliefOf([done(60, 8, 0), done(60, 8, 3), done(60, 9, 6)], 9);

  it('takes an ordinary set as expected, and far fewer or more as news', () => {
    const standing = (reps: number) => expectedAgainstDone(belief, done(60, reps, 9)).standing;
    expect(standing(8)).toBe('as-expected');
    expect(standing(1)).toBe('below');
    expect(standing(25)).toBe('above');
  });

  it('gives the chance that the forecast gives', () => {
    const { chances } = forecastReps(belief, { load: kg(60) });
    const fewer = chances.slice(0, 6).reduce((sum, chance) => sum + chance, 0);
    expect(expectedAgainstDone(belief, done(60, 5, 9)).chanceOfSoFew).toBeCloseTo(fewer, 12);
  });

  it('never takes a set stopped at its target for poor', () => {
    const floor = { ...done(60, 3, 9), end: { kind: 'more', atLeast: 0 } } as const;
    expect(expectedAgainstDone(belief, floor).standing).toBe('floor-only');
  });
});

describe('carryOver', () => {
  const belief = beliefOf([done(60, 8, 0), done(70, 4, 3)], 3);
  const [row, pulldown, press] = ['cable-row', 'cable-pulldown', 'leg-press'].map(named) as [
    Exercise,
    Exercise,
    Exercise,
  ];

  it('carries endurance between exercises of one kind, less surely, and no load', () => {
    const { prior, carried, sharedWork } = carryOver({
      from: row,
      to: pulldown,
      posterior: belief,
    });
    expect(carried).toEqual(['endurance']);
    expect(prior.lnMax).toBeUndefined();
    expect(sharedWork).toBeGreaterThan(0.3);
  });

  it('carries nothing to another kind', () => {
    const { prior, carried } = carryOver({ from: row, to: press, posterior: belief });
    expect(carried).toEqual([]);
    expect(prior.lnKappa.mean).toBeCloseTo(Math.log(enduranceCurves['leg-press'].kappa), 12);
  });

  it('carries strength by a ratio as the range that it is, wider than it was', () => {
    const { prior } = carryOver({
      from: row,
      to: pulldown,
      posterior: belief,
      ratio: { low: 1.05, high: 1.2 },
    });
    const max = oneRepMaxKg(belief);
    // the middle of the ratio on the log scale is the root of its ends
    expect(prior.lnMax?.mean).toBeCloseTo(Math.log(max.likely * Math.sqrt(1.05 * 1.2)), 9);
    expect(prior.lnMax?.sd).toBeGreaterThan(Math.log(max.high / max.low) / (2 * 1.2816));
  });

  it('refuses a ratio upside down', () => {
    const ratio = { low: 1.2, high: 1.05 };
    expect(() => carryOver({ from: row, to: pulldown, posterior: belief, ratio })).toThrow(
      RangeError,
    );
  });
});

describe('nextLoad with a posterior', () => {
  it('goes down to what lands in the window when the load is plainly too heavy', () => {
    const posterior = beliefOf([done(100, 2, 0), done(100, 2, 3)], 6);
    const advice = nextLoad({
      ...barWith(20, 10, 5, 2.5),
      sessions: [
        sessionOn('2026-03-02', kilos(100), [2]),
        sessionOn('2026-03-05', kilos(100), [2]),
      ],
      window: { minReps: 8, maxReps: 10 },
      on: '2026-03-08',
      posterior,
    });
    if (advice.kind !== 'lower') throw new Error(advice.kind);
    expect(advice.load.load).toBeLessThan(kg(100));
    expect(advice.chance?.inside).toBeGreaterThan(0);
  });
});
