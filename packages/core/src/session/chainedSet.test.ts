import { describe, expect, it } from 'vitest';
import { type Exercise, findExercise } from '../anatomy/index.ts';
import { capacityFor } from '../capacity/index.ts';
import { chainTimes, forecastChain, type Stage } from '../extension/index.ts';
import { kappaBand } from '../strength/index.ts';
import { chainedSet } from './chainedSet.ts';
import { doSet } from './doSet.ts';
import { knownLift } from './knownLift.ts';
import { questionOf } from './liftQuestion.testing.ts';
import { type LoadedLift, loadedLift } from './loadedLift.ts';

const fresh = { own: {}, carried: {} };
const question = questionOf();

function loaded(change: Partial<Exercise> = {}): LoadedLift {
  const exercise = { ...question.lift.exercise, ...change };
  const known = knownLift({ ...question, lift: { ...question.lift, exercise } });
  if (known.kind !== 'known') throw new Error(known.kind);
  const made = loadedLift(known, {});
  if (made.kind !== 'loaded') throw new Error(made.message);
  return made;
}

const one = loaded();
const of = (stages: readonly Stage[], change: Partial<Exercise> = {}) =>
  chainedSet(change.sides || change.wayBack ? loaded(change) : one, fresh, [
    { kind: 'lift' },
    ...stages,
  ]);
const further = (stages: readonly Stage[], change?: Partial<Exercise>) => {
  const { chain } = of(stages, change);
  const under = chain.stages
    .slice(1)
    .reduce((sum, { secondsUnderLoad }) => sum + secondsUnderLoad.likely, 0);
  return { added: chain.addedSeconds, under, stages: chain.stages };
};
const hold: Stage = { kind: 'hold', at: 'middle', maxSeconds: 20 };

describe('what a chain adds to a set', () => {
  it('is the time under load after the lifting', () => {
    const { added, under } = further([hold]);
    expect(added).toBeCloseTo(under, 9);
    expect(added).toBeGreaterThan(0);
  });

  it('is what passes with the load off as well', () => {
    const pause = further([{ kind: 'pause', seconds: 15 }]);
    expect(pause.added).toBeCloseTo(pause.under + 15, 9);
    const drop = further([{ kind: 'lighter', loadShare: 0.7 }]);
    expect(drop.added).toBeCloseTo(drop.under + chainTimes.changeSeconds, 9);
    const lower: Stage = { kind: 'lower', secondsEach: 4, maxLowerings: 4 };
    const { added, under, stages } = further([lower]);
    const count = stages[1]?.count?.likely ?? 0;
    expect(count).toBeGreaterThan(1);
    const { wayBack } = question.lift.exercise;
    expect(added).toBeCloseTo(under + chainTimes.resetSeconds[wayBack] * (count - 1), 9);
    const single = further([{ ...lower, maxLowerings: 1 }]);
    expect(single.added).toBeCloseTo(single.under, 9);
  });

  it('is done on both sides of a one-sided lift', () => {
    const { added, under } = further([hold], { sides: 'one' });
    expect(added).toBeCloseTo(2 * under, 9);
  });

  it('leaves the strength that its last stage leaves', () => {
    const lower: Stage = { kind: 'lower', secondsEach: 4, maxLowerings: 4 };
    for (const stages of [[hold], [hold, lower]]) {
      const { chain, capacityLeft } = of(stages);
      expect(chain.stages).toHaveLength(stages.length + 1);
      expect(capacityLeft).toBe(chain.stages.at(-1)?.capacityLeft.likely);
      expect(chain.stages[0]?.capacityLeft.likely).toBeGreaterThan(capacityLeft);
    }
  });

  it('is forecast for the share of the load and for as sure a belief as the lift has', () => {
    const { posterior, secondsPerRep } = one.known;
    const { low, likely, high } = kappaBand(posterior, 0.8);
    const forecast = (intensity: number) =>
      forecastChain({
        stages: [{ kind: 'lift' }, hold],
        exercise: question.lift.exercise,
        intensity,
        secondsPerRep,
        // nine tenths of a normal curve lie below 1.2816 standard deviations
        curve: {
          kappa: likely,
          alpha: posterior.alpha,
          kappaLogSd: (Math.log(high) - Math.log(low)) / 2.5632,
        },
        fatigue: { fast: 0, slow: 0 },
        seed: 1,
      }).stages;
    const at = (share: number) => {
      const work = { ...one.load.work, share: { ...one.load.work.share, likely: share } };
      const load = { ...one.load, work };
      return chainedSet({ ...one, load }, fresh, [{ kind: 'lift' }, hold]).chain.stages;
    };
    expect(at(0.6)).toEqual(forecast(0.6));
    // what a forecast takes: a fifth of the one-rep max to a tenth more than it
    expect(at(0.1)).toEqual(forecast(0.2));
    expect(at(1.3)).toEqual(forecast(1.1));
  });

  it('is forecast alike for the same question', () => {
    expect(of([hold])).toEqual(of([hold]));
  });

  it('begins as tired as the sets before leave the lift', () => {
    const tired = { own: { lats: { fast: 0.2, slow: 0.05 } }, carried: {} };
    const carried = { own: {}, carried: tired.own };
    const after = (fatigue: typeof fresh) =>
      chainedSet(one, fatigue, [{ kind: 'lift' }, hold]).chain.stages[0]?.count?.likely ?? 0;
    expect(after(tired)).toBeLessThan(after(fresh));
    expect(after(carried)).toBe(after(tired));
  });

  it('is refused by the safety rules for the people it names', () => {
    const { notFor, needs, notes } = of([hold]).chain;
    expect(notFor).toContain('The person is under 18.');
    expect(new Set(notFor).size).toBe(notFor.length);
    expect(needs).toEqual([]);
    expect(notes.length).toBeGreaterThan(0);
    expect(findExercise('cable-pulldown').kind).toBe('found');
  });
});

describe('a set', () => {
  const done = (reserve: number, fatigue = fresh) =>
    doSet({ ...one, known: { ...one.known, repsInReserve: reserve } }, fatigue, false);

  it('ends as many repetitions before failure as are to be left', () => {
    const [none, two] = [done(0).set, done(2).set];
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(two.reps[end]).toBe(Math.max(0, none.reps[end] - 2));
      expect(two.seconds[end]).toBe(6 * two.reps[end]);
    }
    expect(done(100).set.reps).toMatchObject({ low: 0, likely: 0, high: 0, level: 0.8 });
    expect(done(100).set.chance).toBeLessThan(1e-5);
  });

  it('takes less of the muscles the more is left', () => {
    const left = (reserve: number) => done(reserve).own.lats?.fast ?? 0;
    expect(left(3)).toBeLessThan(left(0));
    expect(left(100)).toBe(0);
  });

  it('meets the window of repetitions that are done', () => {
    const wide = { ...question.lift.intent, window: { minReps: 1, maxReps: 200 } };
    const all = doSet(
      {
        ...one,
        known: {
          ...one.known,
          question: { ...question, lift: { ...question.lift, intent: wide } },
        },
      },
      fresh,
      false,
    ).set;
    expect(all.chance).toBeGreaterThan(0.95);
    // 8 to 11 with two left are 10 to 13 to failure
    const to = (minReps: number, maxReps: number) => {
      const intent = { ...question.lift.intent, window: { minReps, maxReps } };
      const asked = { ...question, lift: { ...question.lift, intent } };
      return doSet({ ...one, known: { ...one.known, question: asked } }, fresh, false).set.chance;
    };
    expect(done(2).set.chance).toBeCloseTo(to(10, 13), 12);
    expect(done(0).set.chance).toBeCloseTo(one.load.work.inside, 6);
  });

  it('begins with what earlier sets and other lifts leave, and never with less than a twentieth', () => {
    const tired = { lats: { fast: 0.3, slow: 0 } };
    const own = done(0, { own: tired, carried: {} }).set;
    expect(own.capacity).toBeLessThan(1);
    expect(done(0, { own: {}, carried: tired }).set).toEqual(own);
    const spent = Object.fromEntries(
      Object.keys(question.lift.shares).map((id) => [id, { fast: 0.5, slow: 0.49 }]),
    );
    const last = done(0, { own: spent, carried: {} }).set;
    expect(last.capacity).toBeCloseTo(0.01, 9);
    expect(last.reps.likely).toBe(0);
  });

  it('goes on past failure only where it is the last one of a chain', () => {
    const chained = {
      ...one,
      known: { ...one.known, repsInReserve: 2, chain: [{ kind: 'lift' }, hold] as const },
    };
    const [before, last] = [doSet(chained, fresh, false), doSet(chained, fresh, true)];
    expect(before.chain).toBeUndefined();
    expect(last.chain).toBeDefined();
    expect(last.set.reps).toEqual(done(0).set.reps);
    expect(before.set.reps).toEqual(done(2).set.reps);
    // from fresh muscles it leaves what its last stage leaves
    const capacityLeft = last.chain?.stages.at(-1)?.capacityLeft.likely ?? 0;
    expect(capacityFor(last.own, question.lift.shares)).toBeCloseTo(capacityLeft, 9);
    expect(capacityLeft).toBeLessThan(capacityFor(before.own, question.lift.shares));
  });
});
