import { describe, expect, it } from 'vitest';
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
});
