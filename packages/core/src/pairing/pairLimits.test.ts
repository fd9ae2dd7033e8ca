import { describe, expect, it } from 'vitest';
import { rangeErrorOf } from '../basis/rangeErrorOf.testing.ts';
import { kg } from '../load/index.ts';
import type { PairExercise, PairInput } from './Pair.ts';
import { pairPractice, pairSources } from './pairSources.ts';
import { pairsInOnePlace } from './pairsInOnePlace.ts';
import { planPair } from './planPair.ts';

const fly: PairExercise = {
  id: 'fly',
  name: 'Fly',
  direct: { chest: 0.5, 'front-deltoid': 0.45 },
  indirect: { biceps: 0.05 },
  span: 'isolation',
  endurance: 'leg-isolation',
};
const bench: PairExercise = {
  id: 'bench',
  name: 'Bench',
  direct: { chest: 0.2, 'triceps-long-head': 0.7 },
  indirect: { 'front-deltoid': 0.1 },
  span: 'compound',
  endurance: 'leg-press',
};
const curve = { kappa: 40, alpha: 1 };
const pair: PairInput = {
  target: ['chest'],
  limiting: ['biceps'],
  isolation: { exercise: fly, reps: 2, repsLeft: 0, secondsPerRep: 3, curve },
  compound: { exercise: bench, usual: { load: kg(100), reps: 11 }, secondsPerRep: 3, curve },
  transitionSeconds: 10,
};

function refusals(change: Partial<PairInput>) {
  const plan = planPair({ ...pair, ...change });
  return plan.kind === 'refused' ? plan.refusals : [];
}
const isolationWith = (change: Partial<PairExercise>) => ({
  isolation: { ...pair.isolation, exercise: { ...fly, ...change } },
});
const compoundWith = (change: Partial<PairExercise>) => ({
  compound: { ...pair.compound, exercise: { ...bench, ...change } },
});

describe('the rules of a pair hold up to their limits, the limit included', () => {
  it('half of the isolation, a fifth of the compound, 5 % on a helper that gives out first', () => {
    expect(refusals({})).toEqual([]);
  });

  it.each([
    ['isolation-misses-target', isolationWith({ direct: { chest: 0.49 } })],
    ['isolation-misses-target', isolationWith({ span: 'compound' })],
    // Helpers do not count for the target.
    [
      'isolation-misses-target',
      isolationWith({ direct: { 'front-deltoid': 1 }, indirect: { chest: 1 } }),
    ],
    [
      'compound-misses-target',
      compoundWith({ direct: { chest: 0.19, 'triceps-long-head': 0.81 } }),
    ],
    ['compound-misses-target', compoundWith({ span: 'isolation' })],
    [
      'compound-misses-target',
      compoundWith({ direct: { 'triceps-long-head': 1 }, indirect: { chest: 1 } }),
    ],
    ['loads-the-limit', isolationWith({ indirect: { biceps: 0.06 } })],
  ])('%s', (code, change) => {
    expect(refusals(change)).toMatchObject([{ code: `pairing.${code}`, sources: [pairPractice] }]);
  });

  it('a helper with 80 % left is not spent, one with less is, and the words name all of them', () => {
    const left = (triceps: number, deltoid: number) =>
      refusals({
        start: {
          'triceps-long-head': { fast: 0, slow: 1 - triceps },
          'front-deltoid': { fast: 0, slow: 1 - deltoid },
        },
        isolation: {
          ...pair.isolation,
          exercise: { ...fly, direct: { chest: 1 }, indirect: {} },
        },
      });
    expect(left(0.8, 0.8)).toEqual([]);
    expect(left(0.79, 1)).toMatchObject([{ code: 'pairing.helper-spent' }]);
    const [both] = left(0.7, 0.5);
    // The weaker of the two is told: 50 %.
    expect(both?.why).toMatch(/triceps long head and front deltoid would have 50 % left/);
  });

  it('a muscle with less than a tenth of the compound lift is no helper', () => {
    const start = { 'front-deltoid': { fast: 0, slow: 0.9 } };
    expect(refusals({ start })).toMatchObject([{ code: 'pairing.helper-spent' }]);
    expect(refusals({ start, ...compoundWith({ indirect: { 'front-deltoid': 0.09 } }) })).toEqual(
      [],
    );
  });
});

describe('what is said about a pair', () => {
  const said = (transitionSeconds: number) => {
    const plan = planPair({ ...pair, transitionSeconds });
    return plan.kind === 'allowed' ? plan.cautions : [];
  };

  it('is two notes, and a caution before them where the way takes longer than 10 s', () => {
    const short = said(10);
    expect(short.map(({ id, level }) => [id, level])).toEqual([
      ['pair-evidence-mixed', 'note'],
      ['pair-first-set-is-a-test', 'note'],
    ]);
    const long = said(11);
    expect(long.map(({ id, level }) => [id, level])).toEqual([
      ['pair-transition-too-long', 'caution'],
      ['pair-evidence-mixed', 'note'],
      ['pair-first-set-is-a-test', 'note'],
    ]);
    expect(long.map(({ sources }) => sources)).toEqual([[pairPractice], pairSources, pairSources]);
    expect(long.flatMap(({ ask }) => ask)).toEqual([]);
  });
});

describe('pairs at one spot', () => {
  const at = (one: PairExercise, loads: readonly string[], stations: readonly string[] = []) =>
    ({ ...one, loads, stations }) as unknown as PairExercise &
      Parameters<typeof pairsInOnePlace>[1][number];
  const names = (...candidates: readonly ReturnType<typeof at>[]) =>
    pairsInOnePlace(['chest'], candidates).map(
      ({ isolation, compound }) => `${isolation.id} + ${compound.id}`,
    );

  it('share a kind of load, or need none but the body for the compound lift', () => {
    expect(names(at(fly, ['dumbbell', 'stack']), at(bench, ['barbell', 'dumbbell']))).toEqual([
      'fly + bench',
    ]);
    expect(names(at(fly, ['stack']), at(bench, ['barbell']))).toEqual([]);
    expect(names(at(fly, ['stack']), at(bench, ['body']))).toEqual(['fly + bench']);
  });

  it('need the stations of the compound lift at the spot of the isolation lift', () => {
    expect(names(at(fly, ['dumbbell']), at(bench, ['dumbbell'], ['flat-bench']))).toEqual([]);
    expect(
      names(at(fly, ['dumbbell'], ['flat-bench']), at(bench, ['dumbbell'], ['flat-bench'])),
    ).toEqual(['fly + bench']);
  });

  it('leave out what does too little for the target, at the limits of a pair', () => {
    const little = { ...fly, id: 'little', direct: { chest: 0.49 } };
    const no = { ...bench, id: 'no', direct: { chest: 0.19 } };
    expect(
      names(at(fly, ['body']), at(little, ['body']), at(bench, ['body']), at(no, ['body'])),
    ).toEqual(['fly + bench']);
  });

  it('come with those first that do most for the target', () => {
    const more = { ...fly, id: 'more', direct: { chest: 0.9 } };
    const press = { ...bench, id: 'press', direct: { chest: 0.6 } };
    expect(
      names(at(fly, ['body']), at(more, ['body']), at(bench, ['body']), at(press, ['body'])),
    ).toEqual(['more + press', 'fly + press', 'more + bench', 'fly + bench']);
  });
});

it.each([
  ['isolation.reps', { isolation: { ...pair.isolation, reps: 0 } }],
  ['isolation.repsLeft', { isolation: { ...pair.isolation, repsLeft: 11 } }],
  ['isolation.secondsPerRep', { isolation: { ...pair.isolation, secondsPerRep: 0.5 } }],
  ['compound.usual.reps', { compound: { ...pair.compound, usual: { load: kg(100), reps: 0 } } }],
  ['compound.usual.load', { compound: { ...pair.compound, usual: { load: kg(0), reps: 5 } } }],
  ['compound.secondsPerRep', { compound: { ...pair.compound, secondsPerRep: 61 } }],
  ['transitionSeconds', { transitionSeconds: 601 }],
])('a mistake in code is named: %s', (named, change) => {
  expect(rangeErrorOf(() => planPair({ ...pair, ...change }))).toBe(`planPair: ${named}`);
});

it('what the isolation set takes for its own seconds comes back before the compound lift', () => {
  // A tired muscle rests while nothing of it works: for 2 reps of 3 s and the way of 10 s, by hand.
  const tired = { 'triceps-long-head': { fast: 0.15, slow: 0 } };
  const plan = planPair({
    ...pair,
    start: tired,
    isolation: {
      ...pair.isolation,
      exercise: { ...fly, direct: { chest: 1 }, indirect: {} },
    },
  });
  const kept = 0.15 * Math.exp(-0.01365 * 16);
  // Triceps do 0.7 of the press, out of 0.2 + 0.7 + 0.1.
  expect(plan.kind === 'allowed' && plan.capacity.without).toBeCloseTo(1 - 0.7 * kept, 12);
});
