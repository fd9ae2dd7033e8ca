import type { MuscleId } from '../anatomy/index.ts';
import { freshCapacity, restCapacity } from '../capacity/index.ts';
import type { Gym } from '../equipment/index.ts';
import { cautionsFor, limitsFor, stopRulesFor } from '../safety/index.ts';
import type { Client } from './Client.ts';
import type { SessionIntent } from './Intent.ts';
import { liftLimits } from './liftLimits.ts';
import { type Lift, liftOf } from './liftOf.ts';
import { minutesOf } from './minutesOf.ts';
import { type LiftPlanner, planLift } from './planLift.ts';
import type { LiftPlan, SessionPlan } from './SessionPlan.ts';
import { timelineOf } from './timelineOf.ts';

/** What a session is planned from. */
export interface SessionQuestion {
  readonly client: Client;
  readonly gym: Gym;
  readonly intent: SessionIntent;
}

/**
 * A whole session for one person in one gym: for each lift the load with the best chance of ending
 * inside its rep window at its tempo, the ramp to it, and what every set will probably give with
 * the fatigue of everything before it; the time it takes; the cautions and stop rules that apply.
 *
 * A lift without history gets a way to find its load. A lift that cannot be done here, or that
 * this person's limits keep out, is named with the reason. Where somebody has to be asked before
 * any training, there is no session but the question (`ask-first`).
 *
 * Reads no clock: `intent.date` is the day, and the sets of the client are seen from it.
 *
 * @param question as `readSessionFile` of `@windlass/core/schema` gives it.
 * @param planOne how one lift is planned; {@link rememberLifts} for a page that plans at every change.
 */
export function planSession(
  { client, gym, intent }: SessionQuestion,
  planOne: LiftPlanner = planLift,
): SessionPlan {
  const { date, unit, changeSeconds } = intent;
  const context = { intensity: 'vigorous', alone: client.alone, date } as const;
  const cautions = cautionsFor(client.health, context);
  const limits = limitsFor(client.health, context);
  if (limits.training.kind !== 'allowed') {
    return {
      kind: 'ask-first',
      clientName: client.name,
      date,
      reasons: limits.training.reasons.map(({ words }) => words),
      ask: [...new Set(cautions.filter(({ level }) => level === 'stop').flatMap(({ ask }) => ask))],
      cautions,
    };
  }
  const lifts: LiftPlan[] = [];
  const warm = new Set<MuscleId>();
  let state = freshCapacity();
  for (const wanted of intent.lifts) {
    const lift = liftOf(wanted, gym, client.bodyWeight);
    if (lift.kind === 'no-lift') {
      lifts.push({ kind: 'left-out', intent: wanted, reason: lift.reason, message: lift.message });
      continue;
    }
    const refused = liftLimits(lift, limits);
    if (refused) {
      lifts.push(refused);
      continue;
    }
    if (lifts.length > 0) state = restCapacity(state, changeSeconds);
    const { plan, end } = planOne({ lift, client, gym, date, limits, start: state, warm });
    lifts.push(plan);
    if (plan.kind !== 'left-out') for (const id of musclesOf(lift)) warm.add(id);
    state = end;
  }
  const timeline = timelineOf(lifts, changeSeconds);
  return {
    kind: 'session',
    clientName: client.name,
    gymName: gym.name,
    date,
    unit,
    lifts,
    timeline,
    minutes: minutesOf(timeline),
    cautions,
    stopRules: stopRulesFor(client.health),
  };
}

function musclesOf({ shares }: Lift): readonly MuscleId[] {
  return Object.keys(shares) as MuscleId[];
}
