import { describe, expect, it } from 'vitest';
import { testExercise } from './exercise.testing.ts';
import { hoursUntilReady } from './hoursUntilReady.ts';
import { readiness } from './readiness.ts';

const press = testExercise({ chest: 0.6 }, { 'triceps-long-head': 0.4 });
const pushdown = testExercise({ 'triceps-long-head': 1 });

describe('readiness', () => {
  it('takes the session that holds a muscle back longest', () => {
    const result = readiness([
      { hoursAgo: 10, work: [{ exercise: pushdown, sets: 1 }] },
      { hoursAgo: 24, work: [{ exercise: press, sets: 8 }] },
    ]);
    const triceps = result.find(({ muscle }) => muscle === 'triceps-long-head');
    expect(triceps?.session).toBe(1);
    expect(triceps?.readyIn.likely).toBeCloseTo(hoursUntilReady(4).likely - 24, 9);
    expect(result[0]?.muscle).toBe('chest');
  });

  it('is ready now when the hours have passed', () => {
    const [chest] = readiness([{ hoursAgo: 1000, work: [{ exercise: press, sets: 8 }] }]);
    expect(chest?.readyIn).toEqual({ earliest: 0, likely: 0, cautious: 0 });
  });

  it('applies what a person reports and says which report it was', () => {
    const sessions = [{ hoursAgo: 0, work: [{ exercise: press, sets: 3 }] }];
    const [chest] = readiness(sessions, { reports: { soreness: { chest: 'clear' } } });
    expect(chest?.effects.map(({ report }) => report)).toEqual(['soreness']);
    expect(chest?.readyIn.likely).toBeCloseTo(1.25 * hoursUntilReady(3).likely, 9);
    expect(chest?.watchFor).toEqual([]);
  });

  it('points to help, not to waiting, when soreness is severe', () => {
    const sessions = [{ hoursAgo: 48, work: [{ exercise: press, sets: 3 }] }];
    const [chest] = readiness(sessions, { reports: { soreness: { chest: 'severe' } } });
    expect(chest?.watchFor.map(({ id }) => id)).toContain('dark-urine');
  });

  it('shows what earlier sessions taught, once', () => {
    const habit = { shift: Math.log(1.5), shiftSd: 0.2 };
    const [chest] = readiness([{ hoursAgo: 0, work: [{ exercise: press, sets: 3 }] }], { habit });
    expect(chest?.effects[0]?.says).toContain('50 % longer');
    expect(chest?.readyIn.likely).toBeCloseTo(1.5 * hoursUntilReady(3).likely, 9);
  });

  it('has nothing to say without sessions', () => {
    expect(readiness([])).toEqual([]);
  });

  it('names the first of two sessions that hold a muscle back alike, and orders by name', () => {
    const both = testExercise({ vasti: 1, glutes: 1 });
    const session = { hoursAgo: 10, work: [{ exercise: both, sets: 2 }] };
    const told = readiness([session, session]);
    expect(told.map(({ muscle, session: place }) => [muscle, place])).toEqual([
      ['glutes', 0],
      ['vasti', 0],
    ]);
  });

  it('takes the later of two sessions when that holds the muscle back longer', () => {
    const work = [{ exercise: pushdown, sets: 2 }];
    const [triceps] = readiness([
      { hoursAgo: 30, work },
      { hoursAgo: 10, work },
    ]);
    expect(triceps?.session).toBe(1);
  });

  it('refuses a session that lies ahead', () => {
    expect(readiness([{ hoursAgo: 0, work: [] }])).toEqual([]);
    expect(() => readiness([{ hoursAgo: -1, work: [] }])).toThrow('readiness: hoursAgo must be');
  });

  it('says that someone recovers faster, and names the source', () => {
    const habit = { shift: Math.log(0.8), shiftSd: 0.2 };
    const [chest] = readiness([{ hoursAgo: 0, work: [{ exercise: press, sets: 3 }] }], { habit });
    const [effect] = chest?.effects ?? [];
    expect(effect?.report).toBe('earlier-sessions');
    expect(effect?.says).toContain('20 % less');
    expect(effect?.sources.map(({ id }) => id)).toEqual(['mclester-2001']);
  });

  it('orders muscles of different sessions by name when they are ready at the same hour', () => {
    const session = (muscle: 'vasti' | 'glutes') => ({
      hoursAgo: 10,
      work: [{ exercise: testExercise({ [muscle]: 1 }), sets: 2 }],
    });
    for (const sessions of [
      [session('vasti'), session('glutes')],
      [session('glutes'), session('vasti')],
    ]) {
      expect(readiness(sessions).map(({ muscle }) => muscle)).toEqual(['glutes', 'vasti']);
    }
  });
});
