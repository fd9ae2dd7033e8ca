import type { CalendarRequest, PlacedSession, RotaSession } from './Calendar.ts';
import { bestPlacement } from './calendar/bestPlacement.ts';
import { type CalendarModel, formOf, modelOf } from './calendar/CalendarModel.ts';
import { firstLabel } from './calendar/firstLabel.ts';
import { isLight } from './calendar/fixedStarts.ts';
import { gapsOf, type Moment } from './calendar/gapsOf.ts';
import type { Label } from './calendar/Label.ts';
import { requireCalendar } from './calendar/requireCalendar.ts';
import type { Start } from './calendar/Start.ts';
import { type Shortfall, shortfalls } from './calendar/shortfalls.ts';
import { type SpacingConflict, spacingConflicts } from './spacingConflicts.ts';
import { instantOf, wallOf } from './zonedTime.ts';

/** Sessions in their places. */
export interface PlannedCalendar {
  readonly kind: 'planned';
  readonly zone: string;
  /** In time order, never empty. */
  readonly sessions: readonly [PlacedSession, ...PlacedSession[]];
  /** Whole weeks that hold fewer sessions than asked for, and what stood in the way. */
  readonly shortfalls: readonly Shortfall[];
}

/** Not one session has a place, or one that is fixed cannot stay where it is. */
export interface NoCalendar {
  readonly kind: 'nothing-fits' | 'fixed-sessions-conflict';
  readonly message: string;
  readonly shortfalls: readonly Shortfall[];
  /** Muscles that a fixed session would train too early. */
  readonly conflicts: readonly SpacingConflict[];
}

/**
 * Places the sessions of a rotation into the hours a person has: no muscle before it is ready, one
 * session a day at most, as many as possible.
 *
 * Exact: of all plans with the largest number of sessions it gives the one that keeps most of an
 * earlier plan, then the most evenly spread (with `perWeek`), then the earliest. Readiness counts
 * elapsed hours from start to start; starts are wall time in the zone, and hours that a clock change
 * skips or repeats neither lose nor double a session.
 *
 * @param request see the fields; what was missed is simply not among `done`.
 * @returns `planned`; `nothing-fits` when not one session has a place (`smallestChanges` says what
 * would help); `fixed-sessions-conflict` when the fixed sessions cannot all stay.
 * @throws RangeError for dates, zones, ids and numbers that do not exist or fit.
 * @example
 * ```ts
 * import { planCalendar } from '@windlass/core/recovery';
 * const evening = { open: [{ from: '18:00', to: '19:30' }] };
 * const plan = planCalendar({
 *   zone: 'Europe/Oslo',
 *   firstDay: '2026-03-02',
 *   days: 14,
 *   rota: { firstDay: '2026-03-02', days: Array.from({ length: 7 }, () => evening) },
 *   sessions: [{ id: 'all', name: 'Whole body', minutes: 60, muscles: { lats: 48, vasti: 48 } }],
 *   perWeek: 2,
 * });
 * plan.kind === 'planned' && plan.sessions.map(({ date }) => date.slice(8)); // ['02', '05', '09', '12']
 * ```
 */
export function planCalendar(request: CalendarRequest): PlannedCalendar | NoCalendar {
  requireCalendar('planCalendar', request);
  const model = modelOf(request);
  const first = firstLabel(request, model);
  const best = bestPlacement(model, first, request.mostWays);
  if (best === undefined) {
    return {
      kind: 'fixed-sessions-conflict',
      message: 'The fixed sessions cannot all stay: move one of them, or let it go.',
      shortfalls: [],
      conflicts: fixedConflicts(request),
    };
  }
  const placed = backwards(best).map((label) => ({
    session: label.session,
    place: model.starts[label.start] as Start,
  }));
  const [one, ...others] = describe(request, model, placed);
  const missing = shortfalls(request, model, placed);
  return one
    ? { kind: 'planned', zone: request.zone, sessions: [one, ...others], shortfalls: missing }
    : {
        kind: 'nothing-fits',
        message:
          'No session fits into these hours: see what stood in the way, and the smallest change.',
        shortfalls: missing,
        conflicts: [],
      };
}

function backwards(label: Label): readonly Label[] {
  return label.before ? [...backwards(label.before), label] : [];
}

function describe(
  request: CalendarRequest,
  model: CalendarModel,
  placed: readonly { readonly session: number; readonly place: Start }[],
): PlacedSession[] {
  const earlier: Moment[] = (request.done ?? []).map((done) => ({
    session: request.sessions.findIndex(({ id }) => id === done.session),
    start: done.start,
    light: isLight(request, done),
  }));
  return placed.map(({ session, place: { at, light, gym, dayKind } }) => {
    const { id, name } = request.sessions[session] as RotaSession;
    const start = wallOf(at, request.zone);
    const end = at + formOf(model, session, light).minutes;
    const moment = { session, start, light };
    const gaps = gapsOf(request, earlier, moment);
    earlier.push(moment);
    return {
      number: earlier.length,
      session: id,
      name,
      start,
      end: wallOf(end, request.zone),
      startsAt: instantOf(at),
      endsAt: instantOf(end),
      date: start.slice(0, 10),
      light,
      ...(gym === undefined ? {} : { gym }),
      ...(dayKind === undefined ? {} : { dayKind }),
      gaps,
    };
  });
}

function fixedConflicts(request: CalendarRequest): readonly SpacingConflict[] {
  const { done = [], fixed = [] } = request;
  const sessions = [...done, ...fixed].map((one) => ({
    ...one,
    light: isLight(request, one),
  }));
  return spacingConflicts({ zone: request.zone, rotation: request.sessions, sessions });
}
