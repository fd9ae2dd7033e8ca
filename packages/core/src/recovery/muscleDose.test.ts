import { describe, expect, it } from 'vitest';
import type { Variant } from '../anatomy/index.ts';
import { testExercise } from './exercise.testing.ts';
import { muscleDose } from './muscleDose.ts';

const press = testExercise({ chest: 0.6 }, { 'triceps-long-head': 0.4 });
const pushdown = testExercise({ 'triceps-long-head': 1 });

describe('muscleDose', () => {
  it('counts a set 1 for a prime mover and 0.5 for a helper, over exercises', () => {
    const doses = muscleDose([
      { exercise: press, sets: 4 },
      { exercise: pushdown, sets: 3 },
    ]);
    expect(doses).toEqual([
      { muscle: 'triceps-long-head', countedSets: 5, hardSets: 5 },
      { muscle: 'chest', countedSets: 4, hardSets: 4 },
    ]);
  });

  it('adds half a set for each stage past failure', () => {
    const [chest] = muscleDose([{ exercise: press, sets: 2, stagesPastFailure: 2 }]);
    expect(chest).toEqual({ muscle: 'chest', countedSets: 2, hardSets: 4 });
  });

  it('weighs a reserve by the fitted effect: exp(-0.68 · 2 / 0.79)', () => {
    const [chest] = muscleDose([{ exercise: press, sets: 1, repsInReserve: 2 }]);
    expect(chest?.hardSets).toBeCloseTo(Math.exp((-0.68 * 2) / 0.79), 12);
    expect(chest?.countedSets).toBe(1);
  });

  it('takes work without a history as new for someone new to lifting only', () => {
    const work = [{ exercise: pushdown, sets: 3 }];
    // new work: exp((0.74 + ln 1.2) / 0.79) for the arms
    expect(muscleDose(work, 'new')[0]?.hardSets).toBeCloseTo(
      3 * Math.exp((0.74 + Math.log(1.2)) / 0.79),
      10,
    );
    expect(muscleDose(work, 'trained')[0]?.hardSets).toBe(3);
    expect(muscleDose([{ exercise: pushdown, sets: 3, likeSessionsDaysAgo: [] }])).toEqual(
      muscleDose(work, 'new'),
    );
  });

  it('has nothing to say about no work', () => {
    expect(muscleDose([])).toEqual([]);
    expect(muscleDose([{ exercise: press, sets: 0 }])).toEqual([]);
  });

  it('refuses what no session can be', () => {
    expect(() => muscleDose([{ exercise: press, sets: -1 }])).toThrow(RangeError);
    expect(() => muscleDose([{ exercise: press, sets: 1, repsInReserve: Number.NaN }])).toThrow(
      RangeError,
    );
  });

  it('is ordered by the dose, and by name where it is the same', () => {
    const two = testExercise({ vasti: 1, glutes: 1 }, { adductors: 1, 'spinal-erectors': 1 });
    expect(muscleDose([{ exercise: two, sets: 2 }]).map(({ muscle }) => muscle)).toEqual([
      'glutes',
      'vasti',
      'adductors',
      'spinal-erectors',
    ]);
  });

  it('goes by the shares of the variant, where it has its own', () => {
    const work = { exercise: press, sets: 2 };
    const direct = { 'triceps-long-head': 1 };
    const variant: Variant = { id: 'a', name: 'A', changes: 'grip', effect: 'Narrow', direct };
    const doses = (part: Partial<Variant>) =>
      muscleDose([{ ...work, variant: { ...variant, ...part } }]).map(
        ({ muscle, countedSets }) => `${muscle} ${countedSets}`,
      );
    expect(doses({})).toEqual(['triceps-long-head 2']);
    expect(doses({ indirect: { chest: 1 } })).toEqual(['triceps-long-head 2', 'chest 1']);
    const { direct: _, ...shareless } = variant;
    const usual = muscleDose([{ ...work, variant: shareless }]);
    expect(usual).toEqual(muscleDose([work]));
  });

  it('takes a muscle once, as prime mover, and none with a share of 0', () => {
    const odd = testExercise({ chest: 0.6, vasti: 0 }, { chest: 0.2, glutes: 0, vasti: 0.4 });
    expect(muscleDose([{ exercise: odd, sets: 2 }])).toEqual([
      { muscle: 'chest', countedSets: 2, hardSets: 2 },
      { muscle: 'vasti', countedSets: 1, hardSets: 1 },
    ]);
  });

  it('takes every number at the limits of its range, and names the one beyond', () => {
    const limits = { sets: [0, 100], repsInReserve: [0, 50], stagesPastFailure: [0, 10] } as const;
    for (const [name, [least, most]] of Object.entries(limits)) {
      const work = (value: number) => () =>
        muscleDose([{ exercise: press, sets: 1, [name]: value }]);
      for (const value of [least, most]) expect(work(value)).not.toThrow();
      for (const value of [least - 1, most + 1]) {
        expect(work(value)).toThrow(`muscleDose: ${name} must be`);
      }
    }
  });
});
