import type { CalendarRequest } from './Calendar.ts';
import { modelOf } from './calendar/CalendarModel.ts';
import { after, firstLabel } from './calendar/firstLabel.ts';
import { fixedStarts } from './calendar/fixedStarts.ts';
import { hindrance } from './calendar/place.ts';
import { requireCalendar } from './calendar/requireCalendar.ts';
import { wallOf } from './zonedTime.ts';

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
  const others = fixedStarts(request).toSorted((a, b) => a.at - b.at);
  return model.starts
    .filter((start) => {
      const before = others
        .filter((other) => other.at < start.at)
        .reduce((label, other) => after(label, model, other.forced, other), begin);
      if (hindrance(before, model, index, start) !== undefined) return false;
      let label = after(before, model, index, start);
      return others
        .filter((other) => other.at >= start.at)
        .every((other) => {
          const fits = hindrance(label, model, other.forced, other) === undefined;
          label = after(label, model, other.forced, other);
          return fits;
        });
    })
    .map(({ at }) => wallOf(at, request.zone));
}
