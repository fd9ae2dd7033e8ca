import { describe, expect, it } from 'vitest';
import { findExercise } from '../anatomy/index.ts';
import { pulldown } from './boathouse.testing.ts';
import type { LiftPlan } from './LiftPlan.ts';
import { minutesOf } from './minutesOf.ts';
import { timelineOf } from './timelineOf.ts';

function named(id: string) {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`${id} has left the list of exercises`);
  return found.exercise;
}

/** Repetitions of six seconds. */
const sets = (...reps: readonly number[]) =>
  reps.map((likely) => ({ reps: { low: 0, likely, high: 20, level: 0.8 } }));
const lift = { intent: { ...pulldown, restSeconds: 100 }, exercise: named('cable-pulldown') };
const none = { kind: 'none', reason: 'work-load-not-reachable', message: '' };
const planned = (change: object) =>
  ({ kind: 'planned', lift, warmUp: none, sets: sets(10, 8), ...change }) as unknown as LiftPlan;
const brief = (plans: readonly LiftPlan[], changeSeconds = 60) =>
  timelineOf(plans, changeSeconds).map(({ kind, lift: at, step, startSeconds, seconds }) => [
    kind,
    at,
    step,
    startSeconds,
    seconds,
  ]);

describe('timelineOf', () => {
  it('sets up, works and rests, with no rest after the last set', () => {
    expect(brief([planned({}), planned({ sets: sets(5) })])).toEqual([
      ['change', 0, 0, 0, 60],
      ['work', 0, 0, 60, 60],
      ['rest', 0, 0, 120, 100],
      ['work', 0, 1, 220, 48],
      ['change', 1, 0, 268, 60],
      ['work', 1, 0, 328, 30],
    ]);
    expect(brief([])).toEqual([]);
  });

  it('passes over what is left out, and keeps the places of the others', () => {
    const gone = { kind: 'left-out' } as LiftPlan;
    expect(brief([gone, planned({ sets: sets(5) })])).toEqual([
      ['change', 1, 0, 0, 60],
      ['work', 1, 0, 60, 30],
    ]);
  });

  it('does both sides of a one-sided lift, and adds what follows failure to the last set only', () => {
    const one = { ...lift, exercise: { ...lift.exercise, sides: 'one' } };
    expect(brief([planned({ lift: one, sets: sets(5) })]).at(-1)).toEqual(['work', 0, 0, 60, 60]);
    const chain = { addedSeconds: 25 };
    const work = brief([planned({ chain, sets: sets(10, 8, 6) })]).filter(
      ([kind]) => kind === 'work',
    );
    expect(work.map(([, , , , seconds]) => seconds)).toEqual([60, 48, 61]);
  });

  it('puts the handling of all warm-up sets before the first of them', () => {
    const steps = [
      { seconds: 30, restSeconds: 20 },
      { seconds: 25, restSeconds: 45 },
    ];
    const ramp = (minutes: number) =>
      planned({ warmUp: { kind: 'ramp', steps, minutes }, sets: [] });
    // three minutes are 60 s more than the sets and rests of 120
    expect(brief([ramp(3)])).toEqual([
      ['change', 0, 0, 0, 60],
      ['warm-up', 0, 0, 60, 110],
      ['warm-up', 0, 1, 170, 70],
    ]);
    // and never less than they take
    expect(brief([ramp(1)])[1]).toEqual(['warm-up', 0, 0, 60, 50]);
  });

  it('tries a load as often as it may take, as long each time', () => {
    const finding = { kind: 'finding', lift, mostTries: 3, reps: 5 } as unknown as LiftPlan;
    expect(brief([finding])).toEqual([
      ['change', 0, 0, 0, 60],
      ['work', 0, 0, 60, 30],
      ['rest', 0, 0, 90, 100],
      ['work', 0, 1, 190, 30],
      ['rest', 0, 1, 220, 100],
      ['work', 0, 2, 320, 30],
    ]);
  });

  it('goes to and fro between joined lifts, until both are done', () => {
    const join = (place: 'first' | 'second', waits: readonly number[]) => ({
      kind: 'in-turn',
      place,
      transitionSeconds: 15,
      waits,
    });
    const waits = [40, 50];
    const first = planned({ join: join('first', waits), sets: sets(10) });
    const second = planned({ join: join('second', waits), sets: sets(5, 4, 3) });
    expect(brief([first, second])).toEqual([
      ['change', 0, 0, 0, 60],
      ['change', 1, 0, 60, 60],
      ['change', 0, 1, 120, 15],
      ['work', 0, 0, 135, 60],
      ['change', 1, 1, 195, 15],
      ['work', 1, 0, 210, 30],
      ['rest', 1, 0, 240, 40],
      ['work', 1, 1, 280, 24],
      ['rest', 1, 1, 304, 50],
      ['work', 1, 2, 354, 18],
    ]);
    // after another lift, and before one
    const alone = planned({ sets: sets(2) });
    expect(brief([alone, first, second, alone]).map(([kind, at]) => [kind, at])).toEqual([
      ['change', 0],
      ['work', 0],
      ['change', 1],
      ['change', 2],
      ['change', 1],
      ['work', 1],
      ['change', 2],
      ['work', 2],
      ['rest', 2],
      ['work', 2],
      ['rest', 2],
      ['work', 2],
      ['change', 3],
      ['work', 3],
    ]);
    const longer = planned({ join: join('first', [40]), sets: sets(10, 8) });
    const shorter = planned({ join: join('second', [40]), sets: sets(5) });
    expect(brief([longer, shorter]).slice(5)).toEqual([
      ['work', 1, 0, 210, 30],
      ['rest', 1, 0, 240, 40],
      ['work', 0, 1, 280, 48],
    ]);
    const again = planned({ join: join('first', [40, 30]), sets: sets(10, 8, 6) });
    expect(
      brief([again, planned({ join: join('second', [40, 30]), sets: sets(5) })]).slice(7),
    ).toEqual([
      ['work', 0, 1, 280, 48],
      ['rest', 0, 1, 328, 30],
      ['work', 0, 2, 358, 36],
    ]);
  });
});

describe('minutesOf', () => {
  it('adds up the parts', () => {
    const item = (kind: 'change' | 'warm-up' | 'work' | 'rest', seconds: number) =>
      ({ kind, lift: 0, step: 0, startSeconds: 0, seconds }) as const;
    const all = [
      item('change', 60),
      item('warm-up', 30),
      item('work', 90),
      item('rest', 150),
      item('work', 30),
    ];
    expect(minutesOf(all)).toEqual({ change: 1, warmUp: 0.5, work: 2, rest: 2.5, total: 6 });
  });
});
