import { describe, expect, it } from 'vitest';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { Client } from './Client.ts';
import type { LiftIntent } from './Intent.ts';
import type { PlanGym } from './PlanGym.ts';
import { planSession } from './planSession.ts';

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

describe('a lift that is left out comes with exchanges', () => {
  it('the same exercise set up differently first, for an elbow that hurts', () => {
    const { exchanges } = leftOut(pulldown, { ...client, health });
    expect(exchanges[0]).toMatchObject({
      exercise: 'cable-pulldown',
      equipment: 'pulldown',
    });
    expect(exchanges[0]?.variant).toBeDefined();
    expect(exchanges.length).toBeLessThanOrEqual(3);
    for (const { reasonsFor } of exchanges) expect(reasonsFor.length).toBeGreaterThan(0);
  });

  it('that can all be planned as they stand', () => {
    const who = { ...client, health };
    for (const { exercise, variant, equipment } of leftOut(pulldown, who).exchanges) {
      const lift = { ...pulldown, exercise, equipment, ...(variant !== undefined && { variant }) };
      const plan = planSession({ client: who, gym: stationed, intent: intentOf(lift) });
      expect(plan.kind === 'session' && plan.lifts[0]?.kind).not.toBe('left-out');
    }
  });

  it('the same exercise where it can be done, for equipment that is not there', () => {
    const { exchanges } = leftOut({ ...pulldown, equipment: 'tower' });
    expect(exchanges[0]).toMatchObject({ exercise: 'cable-pulldown', equipment: 'pulldown' });
  });

  it('nothing that needs a machine which nobody has named', () => {
    const legs = { ...pulldown, exercise: 'leg-press', equipment: 'tower' };
    const machines = leftOut(legs, client, gym).exchanges.filter(
      ({ equipment }) => equipment === 'pulldown',
    );
    expect(machines).toEqual([]);
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
    const { exchanges } = leftOut(bench, who, flat);
    expect(exchanges.length).toBeGreaterThan(0);
    for (const { equipment } of exchanges) expect(equipment).not.toBe('short-bar');
  });
});
