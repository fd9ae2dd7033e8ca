import { limitsFor } from '../safety/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import type { LiftIntent } from './Intent.ts';
import { liftOf } from './liftOf.ts';
import type { LiftQuestion } from './planLift.ts';

/** What is asked of the pulldown, of somebody alone who has done nothing yet that day. */
export function questionOf(
  intent: Partial<LiftIntent> = {},
  change: Partial<LiftQuestion> = {},
): LiftQuestion {
  const lift = liftOf({ ...pulldown, ...intent }, gym, client.bodyWeight);
  if (lift.kind !== 'lift') throw new Error(lift.message);
  return {
    lift,
    overruled: {},
    refused: [],
    skipSteps: 0,
    skipChain: false,
    client,
    gym,
    date: '2027-03-15',
    limits: limitsFor(client.health, { intensity: 'vigorous', alone: true, date: '2027-03-15' }),
    start: { own: {}, carried: {} },
    warm: new Set(),
    ...change,
  };
}
