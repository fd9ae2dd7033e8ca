import { requireNumber } from '../../basis/index.ts';
import type { CalendarRequest } from '../Calendar.ts';
import { dayNumber } from '../dayNumber.ts';

/** Stops a request that no calendar can be made of. @throws RangeError saying which part. */
export function requireCalendar(where: string, request: CalendarRequest): void {
  const { sessions, rota, rules = [] } = request;
  dayNumber(request.firstDay);
  dayNumber(rota.firstDay);
  requireNumber(where, 'days', request.days, 1, 366);
  requireNumber(where, 'rota.days.length', rota.days.length, 1, 366);
  requireNumber(where, 'sessions.length', sessions.length, 1, 8);
  requireNumber(where, 'perWeek', request.perWeek ?? 1, 1, 7);
  requireNumber(where, 'startEveryMinutes', request.startEveryMinutes ?? 30, 1, 1440);
  requireNumber(where, 'mostWays', request.mostWays ?? 1, 1);
  for (const { mostInARow } of rules) requireNumber(where, 'mostInARow', mostInARow ?? 0, 0);
  const ids = new Set(sessions.map(({ id }) => id));
  if (ids.size < sessions.length) throw new RangeError(`${where}: session ids must differ`);
  for (const { minutes, muscles, light } of sessions) {
    for (const form of [{ minutes, muscles }, ...(light ? [light] : [])]) {
      requireNumber(where, 'minutes', form.minutes, 1, 1440);
      for (const hours of Object.values(form.muscles)) requireNumber(where, 'hours', hours, 0);
    }
  }
  for (const part of ['done', 'fixed', 'keep'] as const) {
    for (const { session } of request[part] ?? []) {
      if (!ids.has(session)) {
        throw new RangeError(`${where}: ${part} names the session ${session}, which is not listed`);
      }
    }
  }
}
