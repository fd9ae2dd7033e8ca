import type { CalendarRequest, OpenHours } from './Calendar.ts';
import { modelOf } from './calendar/CalendarModel.ts';
import { easedSession } from './calendar/easedSession.ts';
import { firstLabel } from './calendar/firstLabel.ts';
import { hoursOn } from './calendar/hoursOn.ts';
import { mostSessions } from './calendar/mostSessions.ts';
import { requireCalendar } from './calendar/requireCalendar.ts';
import { smallest } from './calendar/smallest.ts';
import { dateOfDay, dayNumber } from './dayNumber.ts';
import { type PlannedCalendar, planCalendar } from './planCalendar.ts';
import { spacingConflicts } from './spacingConflicts.ts';

/** The least that one kind of change has to be before more sessions fit. */
export type CalendarChange =
  /** Every muscle ready so many hours sooner: fewer sets, or more left in reserve. */
  | {
      readonly kind: 'less-work';
      readonly hours: number;
      /** The muscles that hold the calendar back. */
      readonly muscles: readonly string[];
      readonly sessions: number;
    }
  /** Sessions shorter by so many minutes. */
  | { readonly kind: 'shorter-sessions'; readonly minutes: number; readonly sessions: number }
  /** One more day with time to train; the first such day. */
  | {
      readonly kind: 'another-day';
      readonly date: string;
      readonly open: OpenHours;
      readonly sessions: number;
    }
  /** The sessions of a round in any order. */
  | { readonly kind: 'any-order'; readonly sessions: number };

/**
 * For each kind of change, the smallest that would allow at least one session more than now;
 * `sessions` says how many then fit. Nothing is changed: the choice is the person's.
 *
 * @returns empty when no single change of these kinds helps, as when `perWeek` is reached everywhere.
 * @throws RangeError as `planCalendar` does.
 * @example
 * ```ts
 * import { smallestChanges } from '@windlass/core/recovery';
 * const day = { open: [{ from: '18:00', to: '19:00' }] };
 * const changes = smallestChanges({
 *   zone: 'Europe/Oslo',
 *   firstDay: '2026-03-02',
 *   days: 3,
 *   rota: { firstDay: '2026-03-02', days: [day] },
 *   sessions: [{ id: 'all', name: 'Whole body', minutes: 60, muscles: { lats: 50 } }],
 * });
 * changes[0]; // { kind: 'less-work', hours: 2, muscles: ['lats'], sessions: 2 }
 * ```
 */
export function smallestChanges(request: CalendarRequest): readonly CalendarChange[] {
  requireCalendar('smallestChanges', request);
  const now = countOf(request);
  return [
    lessWork(request, now),
    shorterSessions(request, now),
    anotherDay(request, now),
    anyOrder(request, now),
  ].filter((change) => change !== undefined);
}

function countOf(request: CalendarRequest): number {
  const model = modelOf(request);
  return mostSessions(model, firstLabel(request, model))?.count ?? 0;
}

function lessWork(request: CalendarRequest, now: number): CalendarChange | undefined {
  const eased = (hours: number): CalendarRequest => ({
    ...request,
    sessions: request.sessions.map((session) => easedSession(session, hours)),
  });
  const longest = Math.ceil(
    Math.max(...request.sessions.flatMap(({ muscles }) => Object.values(muscles)), 0),
  );
  const hours = smallest(longest, (candidate) => countOf(eased(candidate)) > now);
  if (hours === undefined) return undefined;
  const { sessions: placed } = planCalendar(eased(hours)) as PlannedCalendar;
  const conflicts = spacingConflicts({
    zone: request.zone,
    rotation: request.sessions,
    sessions: [...(request.done ?? []), ...placed],
  });
  const muscles = new Set(conflicts.flatMap(({ gaps }) => gaps.map(({ muscle }) => muscle)));
  return { kind: 'less-work', hours, muscles: [...muscles].sort(), sessions: placed.length };
}

function shorterSessions(request: CalendarRequest, now: number): CalendarChange | undefined {
  const shorter = (minutes: number): CalendarRequest => ({
    ...request,
    sessions: request.sessions.map((session) => ({
      ...session,
      minutes: Math.max(1, session.minutes - minutes),
      ...(session.light
        ? { light: { ...session.light, minutes: Math.max(1, session.light.minutes - minutes) } }
        : {}),
    })),
  });
  const longest = Math.max(...request.sessions.map(({ minutes }) => minutes));
  const minutes = smallest(longest, (candidate) => countOf(shorter(candidate)) > now);
  return minutes === undefined
    ? undefined
    : { kind: 'shorter-sessions', minutes, sessions: countOf(shorter(minutes)) };
}

function anotherDay(request: CalendarRequest, now: number): CalendarChange | undefined {
  const first = dayNumber(request.firstDay);
  const open = request.rota.days.flatMap((day) => day.open)[0];
  if (open === undefined) return undefined;
  for (let day = first; day < first + request.days; day += 1) {
    const hours = hoursOn(request, day);
    if (hours.open.length > 0) continue;
    const date = dateOfDay(day);
    const added = { from: date, to: date, hours: { ...hours, open: [open] } };
    const otherHours = [...(request.otherHours ?? []), added];
    const sessions = countOf({ ...request, otherHours });
    if (sessions > now) return { kind: 'another-day', date, open, sessions };
  }
  return undefined;
}

function anyOrder(request: CalendarRequest, now: number): CalendarChange | undefined {
  const sessions = countOf({ ...request, order: 'any-in-round' });
  return sessions > now ? { kind: 'any-order', sessions } : undefined;
}
