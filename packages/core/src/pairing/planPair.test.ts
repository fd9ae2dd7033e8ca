import { describe, expect, it } from 'vitest';
import { exercises, findExercise } from '../anatomy/index.ts';
import { capacityTrace } from '../capacity/index.ts';
import { kg } from '../load/index.ts';
import type { PairExercise, PairInput } from './Pair.ts';
import { pairsInOnePlace } from './pairsInOnePlace.ts';
import { planPair } from './planPair.ts';

function exercise(id: string) {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`no exercise ${id}`);
  return found.exercise;
}

const extension: PairExercise = {
  id: 'extension',
  name: 'Extension',
  direct: { vasti: 1 },
  indirect: {},
  span: 'isolation',
  endurance: 'leg-isolation',
};
const press: PairExercise = {
  id: 'press',
  name: 'Press',
  direct: { vasti: 0.5, glutes: 0.5 },
  indirect: {},
  span: 'compound',
  endurance: 'leg-press',
};
const curve = { kappa: 40, alpha: 1 };
const legs: PairInput = {
  target: ['vasti'],
  isolation: { exercise: extension, reps: 11, repsLeft: 0, secondsPerRep: 3, curve },
  compound: { exercise: press, usual: { load: kg(100), reps: 11 }, secondsPerRep: 3, curve },
  transitionSeconds: 0,
};

function allowed(input: PairInput) {
  const plan = planPair(input);
  if (plan.kind !== 'allowed') throw new Error(plan.refusals.map(({ why }) => why).join(' '));
  return plan;
}

function codes(input: PairInput) {
  const plan = planPair(input);
  return plan.kind === 'refused' ? plan.refusals.map(({ code }) => code) : [];
}

describe('the second lift, by hand', () => {
  it('follows from the capacity that is left', () => {
    // κ 40, α 1: 11 reps are 80 %, each costs 0.8/40 = 0.02. The extensions take 0.22 from the
    // vasti, half of the press: 0.11. Of that 0.6 shows: 0.934 is left for the load of 11 reps.
    const plan = allowed(legs);
    expect(plan.capacity.with).toBeCloseTo(0.934, 9);
    expect(plan.capacity.without).toBe(1);
    expect(plan.loadShare.likely).toBeCloseTo(0.934, 9);
    expect(plan.loadKg.likely).toBeCloseTo(93.4, 7);
    // Transfer 1 and 0.1: 1 − 0.11 and 1 − 0.011.
    expect(plan.loadShare.low).toBeCloseTo(0.89, 9);
    expect(plan.loadShare.high).toBeCloseTo(0.989, 9);
    // With 100 kg: 1 + (0.934 − 0.8)/0.02 = 7.7, so 7 whole repetitions.
    expect(plan.repsAtUsualLoad.likely).toBe(7);
    // One repetition is (40/50 − 40/51)/(40/50) = 1/51 of the load.
    expect(plan.sharePerRep).toBeCloseTo(1 / 51, 9);
    expect(plan.recovered).toBeCloseTo(0, 12);
  });

  it('gives the steps for the capacity chart', () => {
    const { steps, capacity } = allowed({ ...legs, transitionSeconds: 30 });
    const trace = capacityTrace({ shares: press.direct, steps });
    const end = trace.points.at(-1);
    expect(end?.seconds).toBe(63);
    // What is left if all of it shows; of the fall from 1 likely 0.6 does.
    expect(1 - 0.6 * (1 - (end?.capacity ?? 0))).toBeCloseTo(capacity.with, 9);
  });
});

describe('flies before the bench press, when the triceps give out first', () => {
  const chest: PairInput = {
    target: ['chest', 'upper-chest'],
    limiting: ['triceps-short-heads', 'triceps-long-head'],
    isolation: { exercise: exercise('machine-fly'), reps: 10, repsLeft: 0, secondsPerRep: 4 },
    compound: {
      exercise: exercise('barbell-bench-press'),
      usual: { load: kg(80), reps: 8 },
      secondsPerRep: 4,
    },
    transitionSeconds: 40,
  };

  it('presses 56 to 72 kg after 40 s, flags the way, and claims nothing', () => {
    const plan = allowed(chest);
    // Judgement of coaches: 10 to 30 % less than 80 kg.
    expect(plan.loadKg.likely).toBeGreaterThanOrEqual(56);
    expect(plan.loadKg.likely).toBeLessThanOrEqual(72);
    expect(plan.loadKg.high).toBeLessThan(80);
    expect(plan.cautions.map(({ id }) => id)).toEqual([
      'pair-transition-too-long',
      'pair-evidence-mixed',
      'pair-first-set-is-a-test',
    ]);
    expect(plan.cautions[0]?.what).toMatch(/^Transition too long/);
    expect(plan.cautions[1]?.why).toMatch(/triceps worked harder/);
    // 1 − e^(−0.01365·40) = 0.421 of the fast part.
    expect(plan.recovered).toBeCloseTo(0.421, 3);
  });

  it('does not flag ten seconds', () => {
    const ids = allowed({ ...chest, transitionSeconds: 10 }).cautions.map(({ id }) => id);
    expect(ids).not.toContain('pair-transition-too-long');
  });

  it('never puts triceps work first for the chest', () => {
    const pushdown = exercises.find(({ movement }) => movement === 'triceps-extension');
    if (!pushdown) throw new Error('no triceps exercise');
    const found = codes({ ...chest, isolation: { ...chest.isolation, exercise: pushdown } });
    expect(found).toContain('pairing.isolation-misses-target');
    expect(found).toContain('pairing.loads-the-limit');
    expect(found).toContain('pairing.helper-spent');
  });

  it('refuses when earlier work has spent the triceps, and says how much is left', () => {
    const spent = { fast: 0.3, slow: 0.1 };
    const plan = planPair({
      ...chest,
      transitionSeconds: 0,
      start: { 'triceps-short-heads': spent },
    });
    expect(plan).toMatchObject({ kind: 'refused', refusals: [{ code: 'pairing.helper-spent' }] });
    expect(plan.kind === 'refused' && plan.refusals[0]?.why).toMatch(/60 % left/);
  });

  it('offers pairs that are done at one spot', () => {
    const pairs = pairsInOnePlace(chest.target, exercises).map(
      ({ isolation, compound }) => `${isolation.id} then ${compound.id}`,
    );
    expect(pairs).toContain('dumbbell-fly then dumbbell-bench-press');
    expect(pairs).toContain('cable-fly then push-up');
    expect(pairs).not.toContain('machine-fly then barbell-bench-press');
    expect(pairsInOnePlace(chest.target, [])).toEqual([]);
  });
});

describe('pairs that are none', () => {
  it('two compound lifts, or two isolation exercises', () => {
    expect(codes({ ...legs, isolation: { ...legs.isolation, exercise: press } })).toContain(
      'pairing.isolation-misses-target',
    );
    expect(codes({ ...legs, compound: { ...legs.compound, exercise: extension } })).toContain(
      'pairing.compound-misses-target',
    );
    // For the hamstrings the vasti are a helper, and the extensions have spent them.
    expect(codes({ ...legs, target: ['hamstrings'] })).toEqual([
      'pairing.isolation-misses-target',
      'pairing.compound-misses-target',
      'pairing.helper-spent',
    ]);
  });

  it('a programmer is told the argument', () => {
    expect(() => planPair({ ...legs, transitionSeconds: -1 })).toThrow(
      /planPair: transitionSeconds/,
    );
  });
});
