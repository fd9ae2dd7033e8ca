import { dateOfDay, dayNumber } from '../recovery/dayNumber.ts';
import { readiness } from '../recovery/readiness.ts';
import type { TrainedSets, TrainingStatus } from '../recovery/TrainedSets.ts';
import type { Client } from './Client.ts';
import type { SessionIntent } from './Intent.ts';
import type { LiftPlan, PlannedLift, Refusal } from './LiftPlan.ts';
import { likeSessions } from './likeSessions.ts';
import type { NextSession, NextTime } from './SessionPlan.ts';

/** When the same muscles can work again, and what became of a day that somebody has fixed. */
export interface NextSessionAnswer {
  readonly next?: NextSession;
  readonly refused: readonly Refusal[];
}

const HOURS_PER_DAY = 24;

/**
 * When the muscles of a session are ready for as much again: hours from its beginning, and the
 * first day at whose same time of day they have passed. A clock change in between moves that by an
 * hour; for times of day and zones there is the calendar of `@windlass/core/recovery`.
 *
 * The session waits for its last muscle. Lifts without a known load count with all their trial
 * sets. Work counts as new by the earlier sessions of the same movement in the client's log.
 */
export function nextSession(
  lifts: readonly LiftPlan[],
  client: Client,
  { date, overrules }: Pick<SessionIntent, 'date' | 'overrules'>,
): NextSessionAnswer {
  const work = lifts.flatMap((plan) => trainedSets(plan, client, date));
  const muscles = readiness([{ hoursAgo: 0, work }], {
    status: statusOf[client.experience],
    ...(client.reports && { reports: client.reports }),
  });
  if (muscles.length === 0) return { refused: [] };
  const last = (time: 'earliest' | 'likely' | 'cautious'): NextTime => {
    const hours = Math.max(...muscles.map(({ readyIn }) => readyIn[time]));
    return { hours, date: dateOfDay(dayNumber(date) + Math.ceil(hours / HOURS_PER_DAY)) };
  };
  const [earliest, likely, cautious] = [last('earliest'), last('likely'), last('cautious')];
  const next = { earliest, likely, cautious, date: likely.date, notes: [], muscles };
  const asked = overrules?.nextDate;
  if (asked === undefined || asked === likely.date) return { next, refused: [] };
  if (asked <= date) {
    const message = `The next session comes after this one, so on ${dateOfDay(dayNumber(date) + 1)} at the earliest.`;
    return { next, refused: [{ what: 'next-date', code: 'session.next-not-after', message }] };
  }
  const notes = asked < earliest.date ? [TOO_EARLY] : asked < likely.date ? [EARLY] : [];
  return {
    next: { ...next, date: asked, overruled: { chosen: likely.date }, notes },
    refused: [],
  };
}

const TOO_EARLY =
  'On that day fewer than one person in ten has all of these muscles ready: fewer repetitions are likely.';
const EARLY =
  'On that day fewer than half of people have all of these muscles ready: fewer repetitions may come.';

const statusOf: Readonly<Record<Client['experience'], TrainingStatus>> = {
  new: 'new',
  some: 'recreational',
  experienced: 'trained',
};

function trainedSets(plan: LiftPlan, client: Client, date: string): readonly TrainedSets[] {
  if (plan.kind === 'left-out') return [];
  const { exercise } = plan.lift;
  const like = likeSessions(exercise.movement, client, date);
  const familiar = like === undefined ? {} : { likeSessionsDaysAgo: like };
  return plan.kind === 'finding'
    ? [{ exercise, sets: plan.mostTries, repsInReserve: plan.stopWithLeft, ...familiar }]
    : plannedWork(plan).map((work) => ({ exercise, ...work, ...familiar }));
}

/** The sets of a lift, its last one apart where it goes on past lifting failure. */
function plannedWork({ sets, repsInReserve, chain }: PlannedLift) {
  if (!chain) return [{ sets: sets.length, repsInReserve }];
  return [
    { sets: sets.length - 1, repsInReserve },
    { sets: 1, stagesPastFailure: chain.stages.length - 1 },
  ];
}
