import { dateOfDay, dayNumber } from '../recovery/dayNumber.ts';
import type { Client } from './Client.ts';
import type { SessionIntent } from './Intent.ts';
import type { LiftPlan, Refusal } from './LiftPlan.ts';
import { type LiftWork, readyAfter } from './readyAfter.ts';
import type { NextSession } from './SessionPlan.ts';

/** When the same muscles can work again, and what became of a day that somebody has fixed. */
export interface NextSessionAnswer {
  readonly next?: NextSession;
  readonly refused: readonly Refusal[];
}

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
  const ready = readyAfter(lifts.flatMap(plannedWork), client, date);
  if (!ready) return { refused: [] };
  const { earliest, likely } = ready;
  const next = { ...ready, date: likely.date, notes: [] };
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

/** The work of a lift, its last set apart where it goes on past lifting failure. */
function plannedWork(plan: LiftPlan): readonly LiftWork[] {
  if (plan.kind === 'left-out') return [];
  const { exercise } = plan.lift;
  if (plan.kind === 'finding') {
    return [{ exercise, sets: plan.mostTries, repsInReserve: plan.stopWithLeft }];
  }
  const { sets, repsInReserve, chain } = plan;
  if (!chain) return [{ exercise, sets: sets.length, repsInReserve }];
  return [
    { exercise, sets: sets.length - 1, repsInReserve },
    { exercise, sets: 1, stagesPastFailure: chain.stages.length - 1 },
  ];
}
