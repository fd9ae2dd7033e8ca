import { cautionsFor, limitsFor, stopRulesFor } from '../safety/index.ts';
import type { Client } from './Client.ts';
import { chosenLifts } from './chosenLifts.ts';
import { exchangesFor } from './exchangesFor.ts';
import type { LiftIntent, SessionIntent } from './Intent.ts';
import type { LiftPlan, PlannedLift } from './LiftPlan.ts';
import { type LaidOut, layOut } from './layOut.ts';
import { byTurns } from './limit/byTurns.ts';
import { fitLimit } from './limit/fitLimit.ts';
import { nextSession } from './nextSession.ts';
import type { PlanGym } from './PlanGym.ts';
import { type LiftPlanner, planLift } from './planLift.ts';
import type { SessionPlan } from './SessionPlan.ts';
import { settleLift } from './settleLift.ts';
import { stationsAt } from './stationsAt.ts';

/** What a session is planned from. */
export interface SessionQuestion {
  readonly client: Client;
  readonly gym: PlanGym;
  readonly intent: SessionIntent;
}

/**
 * A whole session for one person in one gym: for each lift the load with the best chance of ending
 * inside its rep window at its tempo, the ramp to it, and what every set will probably give with
 * the fatigue of everything before it; the time it takes; when the same muscles are ready again;
 * the cautions and stop rules that apply.
 *
 * Lifts are those that the intent names, then those chosen for the muscles that it names, as few as
 * have each as a prime mover. A lift without history gets a way to find its load. A lift that cannot be done here, or that
 * this person's limits keep out, is named with the reason and what to do instead. Where somebody
 * has to be asked before any training, there is no session but the question (`ask-first`).
 *
 * Two lifts may be done in rounds (`join`), and a last set may go on past lifting failure (`chain`):
 * what speaks against it is named, and the lifts or the set stay ordinary ones.
 *
 * What somebody has fixed (`overrules`) is taken as it is, marked with what would have been chosen,
 * and the rest follows; what the gym or the limits rule out is refused with the reason. Under
 * `minutesAtMost` the least useful is dropped first and named; where not even one lift fits there
 * is no session (`too-short`).
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
  const { date, unit, changeSeconds, minutesAtMost } = intent;
  const most = minutesAtMost ?? Number.POSITIVE_INFINITY;
  const context = { intensity: 'vigorous', alone: client.alone, date } as const;
  const limits = limitsFor(client.health, { ...context, loweringHeavy: intent.lifts.some(lowers) });
  const head = { clientName: client.name, date };
  const cautions = cautionsFor(client.health, context);
  if (limits.training.kind !== 'allowed') {
    return {
      kind: 'ask-first',
      ...head,
      reasons: limits.training.reasons.map(({ words }) => words),
      ask: [...new Set(cautions.filter(({ level }) => level === 'stop').flatMap(({ ask }) => ask))],
      cautions,
    };
  }
  const named = intent.lifts.map((wanted) => settleLift(wanted, gym, client, limits));
  const chosen = chosenLifts(intent, named, client, gym, limits);
  const wanted = { lifts: [...named, ...chosen.lifts], client, gym, date, limits, changeSeconds };
  const whole = layOut(wanted, planOne);
  const fit = fitLimit(whole, most, (kept) => layOut(wanted, planOne, kept));
  if (fit.kind === 'too-short') return tooShort(head, most, fit.leastMinutes, cautions);
  const { laidOut, dropped } = fit;
  const turns =
    dropped.length > 0
      ? byTurns(wanted.lifts, most, (lifts) => layOut({ ...wanted, lifts }, planOne))
      : undefined;
  const { next, refused } = nextSession(laidOut.lifts, client, intent);
  const loweringHeavy = laidOut.lifts.some((plan) => plan.kind === 'planned' && lowersPast(plan));
  return {
    kind: 'session',
    ...head,
    gymName: gym.name,
    unit,
    ...laidOut,
    lifts: withExchanges(laidOut, { client, gym, limits }),
    ...(minutesAtMost !== undefined && {
      limit: { minutesAtMost, without: whole.minutes, dropped, ...(turns && { turns }) },
    }),
    ...(next && { next }),
    refused: [...chosen.refused, ...refused],
    cautions: cautionsFor(client.health, { ...context, loweringHeavy }),
    stopRules: stopRulesFor(client.health),
  };
}

function withExchanges(
  { lifts }: LaidOut,
  place: Pick<SessionQuestion, 'client' | 'gym'> & {
    readonly limits: ReturnType<typeof limitsFor>;
  },
): readonly LiftPlan[] {
  const done = lifts.flatMap((plan) => (plan.kind === 'left-out' ? [] : [plan.lift.intent]));
  const stations = stationsAt(place.gym, [...place.client.sets, ...done]);
  return lifts.map((plan) =>
    plan.kind === 'left-out'
      ? { ...plan, exchanges: exchangesFor(plan, { ...place, stations }) }
      : plan,
  );
}

function tooShort(
  head: { readonly clientName: string; readonly date: string },
  minutesAtMost: number,
  leastMinutes: number,
  cautions: SessionPlan['cautions'],
): SessionPlan {
  const message = `No useful part of this session fits into ${minutesAtMost} minutes: the shortest takes ${Math.ceil(leastMinutes)}. Allow more time, shorten the time between exercises, or fix less.`;
  return { kind: 'too-short', ...head, minutesAtMost, leastMinutes, message, cautions };
}

function lowers({ chain }: LiftIntent): boolean {
  return chain?.stages.some(({ kind }) => kind === 'lower') ?? false;
}

function lowersPast({ chain }: PlannedLift): boolean {
  return chain?.stages.some(({ stage }) => stage.kind === 'lower') ?? false;
}
