import { client, gym, intentOf, pulldown, pulldownSets } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import type { JoinIntent, LiftIntent } from './Intent.ts';
import type { PlanGym } from './PlanGym.ts';
import { planSession } from './planSession.ts';

const [known] = pulldownSets as readonly [ClientSet];
export const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
export const setOf = (exercise: string, equipment: string, value: number): ClientSet => ({
  ...known,
  exercise,
  equipment,
  load: kilos(value),
});
export const strong: Client = {
  ...client,
  sets: [
    known,
    setOf('straight-arm-cable-pulldown', 'light', 25),
    setOf('dumbbell-bench-press', 'dumbbells', 20),
    setOf('dumbbell-curl', 'dumbbells', 10),
  ],
};
/** The boathouse with a light pulley, and a pulldown that begins as heavy as asked. */
export const place = (first = 7.5): PlanGym => ({
  ...gym,
  equipment: [
    ...gym.equipment.filter(({ id }) => id !== 'pulldown'),
    {
      kind: 'stack',
      id: 'pulldown',
      name: 'Pulldown',
      first: kilos(first),
      rest: [{ weight: kilos(2.5), pieces: 24 }],
      pulleyRatio: 1,
    },
    {
      kind: 'stack',
      id: 'light',
      name: 'Light pulley',
      first: kilos(2.5),
      rest: [{ weight: kilos(2.5), pieces: 20 }],
      pulleyRatio: 1,
    },
  ],
});
export const straightArm: LiftIntent = {
  ...pulldown,
  exercise: 'straight-arm-cable-pulldown',
  equipment: 'light',
};
export const press: LiftIntent = {
  ...pulldown,
  exercise: 'dumbbell-bench-press',
  equipment: 'dumbbells',
};
export const curl: LiftIntent = {
  ...pulldown,
  exercise: 'dumbbell-curl',
  equipment: 'dumbbells',
};
export const pair = { kind: 'pair', transitionSeconds: 10 } as const;
export const turns = { kind: 'in-turn', transitionSeconds: 30 } as const;

export function plan(lifts: readonly LiftIntent[], who: Client = strong, where: PlanGym = place()) {
  const session = planSession({ client: who, gym: where, intent: intentOf(...lifts) });
  if (session.kind !== 'session') throw new Error(session.kind);
  return session;
}

export function planned(lifts: readonly LiftIntent[], who?: Client, where?: PlanGym) {
  return plan(lifts, who, where).lifts.map((lift) => {
    if (lift.kind !== 'planned') throw new Error(lift.kind);
    return lift;
  });
}

export const joined = (join: JoinIntent, first: LiftIntent, second: LiftIntent, who?: Client) => {
  const [a, b] = planned([{ ...first, join }, second], who);
  if (!a?.join || !b?.join) throw new Error('not joined');
  return { a, b };
};
