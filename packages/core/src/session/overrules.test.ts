import { describe, expect, it } from 'vitest';
import { toKg } from '../load/index.ts';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { Client } from './Client.ts';
import type { LiftIntent, LiftOverrules, SessionIntent } from './Intent.ts';
import type { PlannedLift } from './LiftPlan.ts';
import { planSession } from './planSession.ts';
import { printSheet } from './printSheet.ts';
import { sessionSheet } from './sessionSheet.ts';

function session(intent: SessionIntent, who: Client = client) {
  const plan = planSession({ client: who, gym, intent });
  if (plan.kind !== 'session') throw new Error(plan.kind);
  return plan;
}

function planned(overrules: LiftOverrules, lift: LiftIntent = pulldown, who?: Client): PlannedLift {
  const [plan] = session(intentOf({ ...lift, overrules }), who).lifts;
  if (plan?.kind !== 'planned') throw new Error(plan?.kind);
  return plan;
}

const kg = (value: number) => ({ value, unit: 'kg' }) as const;
const free = planned({});
const kilograms = ({ work }: PlannedLift) => toKg(work.choice.shown);

describe('a fixed load', () => {
  const lighter = planned({ load: kg(40) });

  it('is taken, marked with what would be chosen, and the rest follows', () => {
    expect(kilograms(lighter)).toBe(40);
    expect(lighter.reason).toBe('fixed');
    expect(lighter.overruled.load?.chosen).toEqual(free.work.choice);
    expect(lighter.sets[0]?.reps.likely).toBeGreaterThan(free.sets[0]?.reps.likely ?? 0);
    const ramp = lighter.warmUp;
    if (ramp.kind === 'ramp') {
      for (const { load } of ramp.steps) expect(toKg(load.load)).toBeLessThan(40);
    }
  });

  it('that the stack cannot make is refused with the nearest ones', () => {
    const refused = planned({ load: kg(41) });
    expect(kilograms(refused)).toBe(kilograms(free));
    // The pin goes to 37.5 kg and 42.5 kg, and two pieces of 1.25 kg lie on top: 40 kg, then 42.5 kg.
    expect(refused.refused).toMatchObject([{ what: 'load', code: 'session.load-not-here' }]);
    expect(refused.refused[0]?.message).toMatch(/does not make 41.kg here.*40.kg and 42\.5.kg/);
    expect(refused.overruled).toEqual({});
  });

  it('above the share that is allowed is refused with the reason', () => {
    const bloodPressure = { status: 'treated', doctorAgrees: true } as const;
    const treated = { ...client, health: { ...client.health, bloodPressure } };
    const heavy = planned({ load: kg(80) }, pulldown, treated);
    expect(heavy.refused).toMatchObject([{ code: 'session.load-over-limit' }]);
    expect(heavy.refused[0]?.message).toContain('at most 80 %');
    expect(kilograms(heavy)).toBeLessThan(80);
  });

  it('begins the search for a load of which nothing is known', () => {
    const row = { ...pulldown, exercise: 'one-arm-dumbbell-row', equipment: 'dumbbells' };
    const [plan] = session(intentOf({ ...row, overrules: { load: kg(12) } })).lifts;
    if (plan?.kind !== 'finding') throw new Error(plan?.kind);
    expect(toKg(plan.firstTry.shown)).toBe(12);
    // The rack begins at 8 kg.
    expect(plan.overruled.load?.chosen && toKg(plan.overruled.load.chosen.shown)).toBe(8);
  });

  it('is refused in a search where it is not made, which then begins with the lightest', () => {
    const row = { ...pulldown, exercise: 'one-arm-dumbbell-row', equipment: 'dumbbells' };
    const search = (overrules: LiftOverrules) => {
      const [plan] = session(intentOf({ ...row, overrules })).lifts;
      if (plan?.kind !== 'finding') throw new Error(plan?.kind);
      return plan;
    };
    const refused = search({ load: kg(13) });
    expect(refused.refused).toMatchObject([{ what: 'load', code: 'session.load-not-here' }]);
    expect(refused.overruled).toEqual({});
    expect(toKg(refused.firstTry.shown)).toBe(8);
    for (const overrules of [{}, { load: kg(8) }]) {
      expect(search(overrules)).toMatchObject({ refused: [], overruled: {} });
    }
  });
});

describe('a planned lift', () => {
  it('holds what there is and nothing else', () => {
    expect(free.lighter && toKg(free.lighter.choice.shown)).toBeLessThan(kilograms(free));
    expect(free.heavier && toKg(free.heavier.choice.shown)).toBeGreaterThan(kilograms(free));
    expect(free).not.toHaveProperty('chosenFor');
    expect(free).not.toHaveProperty('chain');
    expect(free.oneRepMaxKg?.likely).toBeGreaterThan(kilograms(free));
    expect(planned({ load: kg(7.5) })).not.toHaveProperty('lighter');
  });
});

describe('fixed sets, rests, set-up and warm-up', () => {
  it('are taken and marked', () => {
    const plan = planned({
      sets: 3,
      restSeconds: 60,
      variant: 'neutral-grip',
      warmUp: [{ load: kg(27.5), reps: 5 }],
    });
    expect(plan.sets).toHaveLength(3);
    expect(plan.lift.intent).toMatchObject({ sets: 3, restSeconds: 60, variant: 'neutral-grip' });
    expect(plan.lift.variant?.id).toBe('neutral-grip');
    expect(plan.warmUp).toMatchObject({ kind: 'ramp', reps: 5 });
    expect(plan.overruled).toMatchObject({
      sets: { chosen: 2 },
      restSeconds: { chosen: 150 },
      variant: { chosen: 'usual' },
      warmUp: { chosen: free.warmUp },
    });
    expect(plan.refused).toEqual([]);
  });

  it('leave the warm-up out where none is fixed', () => {
    expect(planned({ warmUp: [] }).warmUp).toMatchObject({ kind: 'no-ramp', reason: 'as-asked' });
  });

  it.each([
    [{ warmUp: [{ load: kg(90), reps: 3 }] }, 'session.warm-up-too-heavy'],
    [{ warmUp: [{ load: kg(28), reps: 3 }] }, 'session.load-not-here'],
    [{ warmUp: [{ load: kg(27.5), reps: 0 }] }, 'session.warm-up-reps'],
    [{ sets: 0 }, 'session.sets-out-of-range'],
    [{ restSeconds: -5 }, 'session.rest-out-of-range'],
    [{ variant: 'upside-down' }, 'session.variant-not-open'],
  ] satisfies [LiftOverrules, string][])(
    '%o is refused and leaves the plan what it was',
    (overrules, code) => {
      const plan = planned(overrules);
      expect(plan.refused.map((refusal) => refusal.code)).toEqual([code]);
      expect(plan.sets).toEqual(free.sets);
      expect(plan.warmUp).toEqual(free.warmUp);
      expect(plan.overruled).toEqual({});
    },
  );

  it('keep a set-up away from an elbow that hurts', () => {
    const health = {
      ...client.health,
      complaints: [{ kind: 'elbow-outer', redFlags: [] }],
      clinician: { by: 'physiotherapist', agreesToTraining: true },
    } as const;
    const plan = planned(
      { variant: 'usual' },
      { ...pulldown, variant: 'neutral-grip' },
      { ...client, health },
    );
    expect(plan.lift.variant?.id).toBe('neutral-grip');
    expect(plan.refused).toMatchObject([{ what: 'variant' }]);
  });
});

describe('the sheet', () => {
  it('says what is fixed with what would be chosen, and what is refused', () => {
    const intent = intentOf({ ...pulldown, overrules: { load: kg(40), sets: 11 } });
    const text = printSheet(sessionSheet(session(intent))).replaceAll(/\s+/g, ' ');
    expect(text).toMatch(/fixed The load is fixed; [\d.]+ kg would be chosen\./);
    expect(text).toMatch(/refused Fix the number of sets as a whole number from 1 to 10\./);
  });
});
