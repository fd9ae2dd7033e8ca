import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { forecastReps, type PerformedSet, type RepCurve, shareForReps } from '../strength/index.ts';
import { beliefOf, done, named } from './beliefs.testing.ts';
import { doseEvidence } from './doseEvidence.ts';
import { expectedAgainstDone } from './expectedAgainstDone.ts';
import { barWith, sessionOn } from './gym.testing.ts';
import { nextLoad } from './nextLoad.ts';
import { performedSets } from './performedSets.ts';

const kilos = (value: number) => ({ value, unit: 'kg' }) as const;

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

  it('never knows again how tired a session is after a rest that was not noted', () => {
    const session = sessionOn('2026-03-02', kilos(60), [8, 7, 6], { end, restSeconds: 120 });
    const [first, { restSeconds: _, ...second } = session.sets[0], third = first] = session.sets;
    const gap = { ...session, sets: [first, second, third] as const };
    expect(performedSets([gap, session], { exercise }).map(({ reps }) => reps)).toEqual([
      8, 8, 7, 6,
    ]);
  });

  it('begins every session fresh, and never forgets what a rest of no seconds leaves', () => {
    const session = sessionOn('2026-03-02', kilos(60), [8, 8], { end, restSeconds: 0 });
    const [one, two, three, four] = performedSets([session, session], { exercise });
    expect(one).not.toHaveProperty('capacity');
    expect(one).not.toHaveProperty('secondsPerRep');
    expect(three).toEqual(one);
    expect(four).toEqual(two);
    // each of eight repetitions costs the root of the share over kappa
    expect(two?.capacity).toBeCloseTo(1 - (8 * Math.sqrt(shareForReps(8))) / 38.2, 9);
  });

  it('leaves more after sets with repetitions left, and after light ones of another curve', () => {
    const second = (change: object, curve?: RepCurve) => {
      const session = sessionOn('2026-03-02', kilos(60), [8, 8], {
        end,
        restSeconds: 60,
        ...change,
      });
      const [, after] = performedSets([session], { exercise, ...(curve && { curve }) });
      return after?.capacity ?? 0;
    };
    const usual = second({});
    expect(second({ end: { kind: 'reserve', repsLeft: 3 } })).toBeGreaterThan(usual);
    expect(second({ end: { kind: 'more', atLeast: 3 } })).toBe(usual);
    expect(second({}, { kappa: 100, alpha: 0.5 })).toBeGreaterThan(usual);
    // a slower repetition costs more of a lower endurance; three seconds are the pace of the curve
    expect(second({ tempo: '1-1-1-0' })).toBeCloseTo(usual, 12);
    expect(second({ tempo: '6-0-3-0' })).not.toBeCloseTo(usual, 3);
    expect(second({ tempo: 'slow' })).toBe(usual);
  });

  it('takes nobody for stronger after much work than a twentieth', () => {
    const many = Array.from({ length: 40 }, () => 100);
    const session = sessionOn('2026-03-02', kilos(60), many, { end, restSeconds: 0 });
    const capacities = performedSets([session], { exercise }).map(({ capacity = 1 }) => capacity);
    expect(Math.min(...capacities)).toBe(0.05);
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

  it('adds what was left, with what people leave more than they say, and counts down', () => {
    const set = (end: PerformedSet['end']) =>
      expectedAgainstDone(belief, { ...done(60, 5, 9), end });
    expect(set({ kind: 'failure' }).done).toBe(5);
    expect(set({ kind: 'reserve', repsLeft: 2 }).done).toBe(7.95);
    expect(set({ kind: 'more', atLeast: 2 }).done).toBe(7);
    const { chances } = forecastReps(belief, { load: kg(60) });
    const upTo = (most: number) =>
      chances.slice(0, most + 1).reduce((sum, chance) => sum + chance, 0);
    expect(set({ kind: 'reserve', repsLeft: 2 }).chanceOfSoFew).toBeCloseTo(upTo(7), 12);
  });

  it('is as expected up to both ends of the band, which is as wide as is asked for', () => {
    const { expected } = expectedAgainstDone(belief, done(60, 8, 9));
    const standing = (reps: number, level?: number) =>
      expectedAgainstDone(belief, done(60, reps, 9), level).standing;
    expect(standing(expected.low)).toBe('as-expected');
    expect(standing(expected.high)).toBe('as-expected');
    expect(standing(expected.low - 1)).toBe('below');
    expect(standing(expected.high + 1)).toBe('above');
    expect(standing(expected.low - 1, 0.99)).toBe('as-expected');
    expect(expectedAgainstDone(belief, done(60, 8, 9), 0.99).expected.level).toBe(0.99);
  });

  it('takes a floor above the band for news', () => {
    const more = { ...done(60, 25, 9), end: { kind: 'more', atLeast: 0 } } as const;
    expect(expectedAgainstDone(belief, more).standing).toBe('above');
  });

  it('never takes a set stopped at its target for poor', () => {
    const floor = { ...done(60, 3, 9), end: { kind: 'more', atLeast: 0 } } as const;
    expect(expectedAgainstDone(belief, floor).standing).toBe('floor-only');
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

describe('doseEvidence', () => {
  it('holds both sides, each finding with a verified source of its own', () => {
    expect(new Set(doseEvidence.map(({ speaksFor }) => speaksFor)).size).toBe(2);
    expect(new Set(doseEvidence.map(({ source }) => source.id)).size).toBe(doseEvidence.length);
    for (const { source } of doseEvidence) expect(source.standing).toBe('verified');
  });
});
