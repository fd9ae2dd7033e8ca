import type { CalendarRequest, TimedSession } from './Calendar.ts';
import { modelOf } from './calendar/CalendarModel.ts';
import { after, firstLabel } from './calendar/firstLabel.ts';
import { hindrance } from './calendar/place.ts';
import { requireCalendar } from './calendar/requireCalendar.ts';
import { onDay } from './calendar/startsOf.ts';
import { dayNumber } from './dayNumber.ts';
import { minutesOf, wallOf } from './zonedTime.ts';

/**
 * Every start at which one more session fits between others that stay where they are: where a
 * missed session can still be done, or an extra one.
 *
 * A start is left out when a muscle would not be ready, there or at a later session; when the day
 * has a session already; and when the session does not fit into the hours, the gym, the rule for
 * the day or the week.
 *
 * @param request the hours, with what was `done`, and under `fixed` what stays.
 * @param session id of the session to be placed.
 * @returns wall times in order; empty when there is none.
 * @throws RangeError as `planCalendar` does, or for an unknown id.
 * @example
 * ```ts
 * import { possibleStarts } from '@windlass/core/recovery';
 * const request = {
 *   zone: 'Europe/Oslo',
 *   firstDay: '2026-03-06',
 *   days: 4,
 *   rota: { firstDay: '2026-03-06', days: [{ open: [{ from: '18:00', to: '19:00' }] }] },
 *   sessions: [{ id: 'all', name: 'Whole body', minutes: 60, muscles: { lats: 48 } }],
 *   done: [{ session: 'all', start: '2026-03-02T18:00' }],
 *   fixed: [{ session: 'all', start: '2026-03-09T18:00' }],
 * };
 * possibleStarts(request, 'all'); // ['2026-03-06T18:00', '2026-03-07T18:00']
 * ```
 */
export function possibleStarts(request: CalendarRequest, session: string): readonly string[] {
  requireCalendar('possibleStarts', request);
  const index = request.sessions.findIndex(({ id }) => id === session);
  if (index < 0) {
    throw new RangeError(`possibleStarts: no session of the rotation has the id ${session}`);
  }
  const model = modelOf(request);
  const begin = firstLabel(request, model);
  const others = (request.fixed ?? [])
    .map((other) => placeOf(request, other))
    .sort((a, b) => a.start.at - b.start.at);
  return model.starts
    .filter((start) => {
      if (start.forced !== undefined) return false;
      const before = others
        .filter((other) => other.start.at < start.at)
        .reduce((label, other) => after(label, model, other.session, other.start), begin);
      if (hindrance(before, model, index, start) !== undefined) return false;
      let label = after(before, model, index, start);
      return others
        .filter((other) => other.start.at >= start.at)
        .every((other) => {
          const fits = hindrance(label, model, other.session, other.start) === undefined;
          label = after(label, model, other.session, other.start);
          return fits;
        });
    })
    .map(({ at }) => wallOf(at, request.zone));
}

function placeOf(request: CalendarRequest, { session, start, light }: TimedSession) {
  const place = onDay(request, dayNumber(start.slice(0, 10)));
  return {
    session: request.sessions.findIndex(({ id }) => id === session),
    start: {
      ...place,
      at: minutesOf(start, request.zone),
      close: Number.POSITIVE_INFINITY,
      light: light ?? place.light,
    },
  };
}
