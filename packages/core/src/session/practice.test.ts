import { describe, expect, it } from 'vitest';
import { toKg } from '../load/index.ts';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import type { LiftIntent } from './Intent.ts';
import { planSession } from './planSession.ts';
import { printSheet } from './printSheet.ts';
import { sessionSheet } from './sessionSheet.ts';

const kg = (value: number) => ({ value, unit: 'kg' }) as const;

function session(who: Client, ...lifts: readonly LiftIntent[]) {
  const plan = planSession({ client: who, gym, intent: intentOf(...lifts) });
  if (plan.kind !== 'session') throw new Error(plan.kind);
  return plan;
}

function lift(exercise: string, equipment: string, minReps: number, sets: number): LiftIntent {
  return { ...pulldown, exercise, equipment, sets, window: { minReps, maxReps: minReps + 2 } };
}

describe('whole sessions, as practitioners ask about them', () => {
  it('five sets of bench press, then incline dumbbells, then triceps: the ramp is not repeated', () => {
    const done = (exercise: string, equipment: string, load: number, reps: number): ClientSet => ({
      date: '2027-03-11',
      exercise,
      equipment,
      load: kg(load),
      reps,
      end: { kind: 'failure' },
      tempo: pulldown.tempo,
    });
    const strong: Client = {
      ...client,
      alone: false,
      sets: [
        done('barbell-bench-press', 'short-bar', 80, 5),
        done('incline-dumbbell-press', 'dumbbells', 24, 10),
        done('cable-pushdown', 'pulldown', 30, 15),
      ],
    };
    const steps = (...lifts: readonly LiftIntent[]) =>
      session(strong, ...lifts).lifts.map((plan) => {
        if (plan.kind !== 'planned') throw new Error(plan.kind);
        return plan.warmUp.kind === 'ramp' ? plan.warmUp.steps.length : 0;
      });
    const bench = lift('barbell-bench-press', 'short-bar', 5, 5);
    const [first = 0, second = 0, third = 0] = steps(
      bench,
      lift('incline-dumbbell-press', 'dumbbells', 10, 3),
      lift('cable-pushdown', 'pulldown', 15, 3),
    );
    expect(first).toBeGreaterThanOrEqual(3);
    expect(first).toBeLessThanOrEqual(5);
    expect(second).toBeLessThanOrEqual(1);
    expect(third).toBeLessThanOrEqual(1);
    // The same lift first for fifteen: one or two steps.
    const [light = 0] = steps({ ...bench, window: { minReps: 15, maxReps: 17 } });
    expect(light).toBeGreaterThanOrEqual(1);
    expect(light).toBeLessThanOrEqual(2);
    // A lift for other muscles later gets a ramp of its own.
    const row = done('barbell-bent-over-row', 'short-bar', 70, 6);
    const later = session(
      { ...strong, sets: [...strong.sets, row] },
      bench,
      lift('barbell-bent-over-row', 'short-bar', 5, 2),
    ).lifts[1];
    expect(later?.kind === 'planned' && later.warmUp.kind).toBe('ramp');
  });

  it('a first day without any number: a way to find the load, from the lightest one', () => {
    const fresh: Client = { ...client, experience: 'new', sets: [], bodyWeight: kg(64) };
    const twelve = { ...pulldown, sets: 3, window: { minReps: 12, maxReps: 12 } };
    const plan = session(fresh, twelve, {
      ...twelve,
      exercise: 'barbell-bench-press',
      equipment: 'short-bar',
    });
    for (const one of plan.lifts) {
      if (one.kind !== 'finding') throw new Error(one.kind);
      expect(one.firstTry).toBe(one.lift.loads.loads[0]);
      expect(one.reps).toBeGreaterThanOrEqual(5);
      expect(one.reps).toBeLessThanOrEqual(8);
      expect(one.mostTries).toBeLessThanOrEqual(4);
    }
    // The bar weighs 15 kg, the first plate of the stack 7.5 kg.
    const loads = plan.lifts.map((one) => (one.kind === 'finding' ? toKg(one.firstTry.shown) : 0));
    expect(loads).toEqual([7.5, 15]);
    expect(printSheet(sessionSheet(plan))).not.toMatch(/one-rep max|maximal single/);
  });

  it('treated blood pressure: moderate loads, two left, no maximum and no breath held', () => {
    const bloodPressure = {
      status: 'treated',
      doctorAgrees: true,
      medicines: ['diuretic', 'beta-blocker'],
    } as const;
    const who = { ...client, health: { ...client.health, bloodPressure } };
    const plan = session(who, { ...pulldown, window: { minReps: 10, maxReps: 14 } });
    const [one] = plan.lifts;
    if (one?.kind !== 'planned') throw new Error(one?.kind);
    expect(one.work.share.likely).toBeLessThanOrEqual(0.8);
    expect(one.repsInReserve).toBe(2);
    expect(plan.stopRules.map(({ id }) => id)).toContain('chest-discomfort');
    expect(printSheet(sessionSheet(plan))).not.toMatch(/heart rate of|hold your breath/i);
  });
});
