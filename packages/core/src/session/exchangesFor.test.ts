import { describe, expect, it } from 'vitest';
import { type ComplaintId, limitsFor } from '../safety/index.ts';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { Client } from './Client.ts';
import { exchangesFor } from './exchangesFor.ts';
import type { LiftIntent } from './Intent.ts';
import type { LeftOutLift } from './LiftPlan.ts';
import type { PlanGym } from './PlanGym.ts';
import { planSession } from './planSession.ts';
import { stationsAt } from './stationsAt.ts';

const stationed: PlanGym = {
  ...gym,
  stations: [
    { station: 'high-pulley', equipment: 'pulldown' },
    { station: 'chin-up-bar', equipment: 'station' },
  ],
};

function leftOut(lift: LiftIntent, who: Client = client, where: PlanGym = stationed) {
  const plan = planSession({ client: who, gym: where, intent: intentOf(lift) });
  const [found] = plan.kind === 'session' ? plan.lifts : [];
  if (found?.kind !== 'left-out') throw new Error(found?.kind);
  return found;
}

const health = {
  ...client.health,
  complaints: [{ kind: 'elbow-outer', redFlags: [] }],
  clinician: { by: 'physiotherapist', agreesToTraining: true },
} as const;

/** For a reason by itself, as a plan asks for them. */
function exchanges(
  intent: LiftIntent,
  reason: LeftOutLift['reason'],
  who: Client = client,
  where: PlanGym = stationed,
) {
  const limits = limitsFor(who.health, {
    intensity: 'vigorous',
    alone: who.alone,
    date: '2027-03-15',
  });
  const place = { client: who, gym: where, limits, stations: stationsAt(where, []) };
  return exchangesFor({ intent, reason }, place);
}

describe('a lift that is left out comes with exchanges', () => {
  it('the same exercise set up differently first, for an elbow that hurts', () => {
    const offered = leftOut(pulldown, { ...client, health }).exchanges;
    expect(offered[0]).toMatchObject({
      exercise: 'cable-pulldown',
      equipment: 'pulldown',
    });
    expect(offered[0]?.variant).toBeDefined();
    expect(offered.length).toBeLessThanOrEqual(3);
  });

  it('that can all be planned as they stand, with reasons in words', () => {
    const sore = (...kinds: readonly ComplaintId[]): Client => ({
      ...client,
      health: { ...health, complaints: kinds.map((kind) => ({ kind, redFlags: [] })) },
    });
    const press = { ...pulldown, exercise: 'dumbbell-bench-press', equipment: 'dumbbells' };
    const { bodyWeight: _, ...nameless } = sore('elbow-outer');
    for (const [who, lift] of [
      [sore('elbow-outer'), pulldown],
      [nameless, pulldown],
      // push-ups would need a stop for the one and handles for the other: two set-ups
      [sore('shoulder-front-bottom-of-press', 'wrist'), press],
      [sore('shoulder-front-bottom-of-press'), press],
    ] as const) {
      const offered = leftOut(lift, who).exchanges;
      expect(offered.length).toBeGreaterThan(0);
      for (const { exercise, variant, equipment, reasonsFor, reasonsAgainst } of offered) {
        const other = { ...lift, exercise, equipment, ...(variant !== undefined && { variant }) };
        const plan = planSession({ client: who, gym: stationed, intent: intentOf(other) });
        expect(plan.kind === 'session' && plan.lifts[0]?.kind).not.toBe('left-out');
        expect(reasonsFor.length).toBeGreaterThan(0);
        for (const words of [...reasonsFor, ...reasonsAgainst]) expect(words).toMatch(/\w\.$/);
      }
    }
  });

  it('the same exercise where it can be done, for equipment that is not there', () => {
    const elsewhere = {
      exercise: 'cable-pulldown',
      equipment: 'pulldown',
      name: 'Cable pulldown',
      equipmentName: 'Pulldown',
      reasonsFor: ['It is the same exercise on other equipment.'],
      reasonsAgainst: [],
    };
    const tower = { ...pulldown, equipment: 'tower' };
    expect(leftOut(tower).exchanges[0]).toStrictEqual(elsewhere);
    // in the set-up that was wanted, which is open to an elbow that hurts
    const neutral = { ...tower, variant: 'neutral-grip' };
    expect(leftOut(neutral, { ...client, health }).exchanges[0]).toStrictEqual({
      ...elsewhere,
      variant: 'neutral-grip',
      name: 'Cable pulldown, palms facing each other',
    });
    // the usual grip is not
    expect(leftOut(tower, { ...client, health }).exchanges[0]).not.toMatchObject({
      name: 'Cable pulldown',
    });
  });

  it('other exercises where it is nowhere else, with their set-up in the name', () => {
    const { bodyWeight: _, ...nameless } = client;
    for (const { exercise } of exchanges(pulldown, 'no-load-for-window', nameless)) {
      expect(['cable-pulldown', 'chin-up']).not.toContain(exercise);
    }
    const [first] = leftOut(pulldown, { ...client, health }).exchanges;
    expect(first?.name).toMatch(/^Cable pulldown, [a-z]/);
  });

  it('none where only time is missing', () => {
    expect(exchanges(pulldown, 'no-load-for-window')).not.toEqual([]);
    expect(exchanges(pulldown, 'no-time')).toEqual([]);
  });

  it('none where somebody has to be asked what a list means', () => {
    const clinician = { by: 'physician', notAllowed: ['the usual nonsense'] } as const;
    const who = { ...client, health: { ...client.health, clinician } };
    expect(leftOut(pulldown, who).exchanges).toEqual([]);
  });

  it('a bar over the chest alone only to those who end before failure', () => {
    const only: PlanGym = {
      ...gym,
      equipment: gym.equipment.filter(({ id }) => id === 'short-bar'),
      stations: [{ station: 'flat-bench' }, { station: 'rack' }],
    };
    const press = { ...pulldown, exercise: 'dumbbell-bench-press', equipment: 'dumbbells' };
    const offered = (who: Client) =>
      exchanges(press, 'unknown-equipment', who, only).map(({ exercise }) => exercise);
    expect(offered(client)).not.toContain('barbell-bench-press');
    const bloodPressure = { status: 'treated', doctorAgrees: true } as const;
    expect(offered({ ...client, health: { ...client.health, bloodPressure } })).toContain(
      'barbell-bench-press',
    );
  });

  it('nothing that needs a machine which nobody has named', () => {
    const legs = { ...pulldown, exercise: 'leg-press', equipment: 'tower' };
    const places = leftOut(legs, client, gym).exchanges.map(({ equipment }) => equipment);
    expect(places).not.toContain('pulldown');
    expect(places.every((id) => gym.equipment.some((item) => item.id === id))).toBe(true);
  });

  it('none for a name that is no exercise', () => {
    expect(leftOut({ ...pulldown, exercise: 'cable-puldown' }).exchanges).toEqual([]);
  });
});

describe('refused presses and lowerings alone on a bar', () => {
  it('offer what can be left at any point instead', () => {
    // A practitioner's question: barbell bench press alone, no pins. What is offered when the lift
    // is not to be done must be possible to leave.
    const clinician = { by: 'physician', notAllowed: ['barbell bench press'] } as const;
    const who = { ...client, health: { ...client.health, clinician } };
    const bench = { ...pulldown, exercise: 'barbell-bench-press', equipment: 'short-bar' };
    const flat: PlanGym = { ...gym, stations: [{ station: 'flat-bench' }] };
    const offered = leftOut(bench, who, flat).exchanges;
    expect(offered.length).toBeGreaterThan(0);
    for (const { equipment } of offered) expect(equipment).not.toBe('short-bar');
  });
});
