import type { CalendarRequest, OpenHours } from '../Calendar.ts';
import { dateOfDay, dayNumber } from '../dayNumber.ts';
import { minutesOf } from '../zonedTime.ts';
import { fixedStarts } from './fixedStarts.ts';
import { hoursOn } from './hoursOn.ts';
import { onDay } from './onDay.ts';
import type { Start } from './Start.ts';

/**
 * Every moment of the plan at which a session could begin, in time order: from each opening on at
 * equal elapsed distances, so that a clock change neither loses nor doubles one.
 */
export function startsOf(request: CalendarRequest): readonly Start[] {
  const first = dayNumber(request.firstDay);
  const last = first + request.days - 1;
  const shortest = Math.min(
    ...request.sessions.flatMap(({ minutes, light }) => [minutes, light?.minutes ?? minutes]),
  );
  const every = request.startEveryMinutes ?? 30;
  const starts: Start[] = fixedStarts(request).filter(({ day }) => first <= day && day <= last);
  for (let day = first; day <= last; day += 1) {
    const place = onDay(request, day);
    for (const { open, close } of openOn(request, day)) {
      for (let at = open; at + shortest <= close; at += every) starts.push({ ...place, at, close });
    }
  }
  return starts.sort((a, b) => a.at - b.at);
}

/** The open hours of a day in minutes since 1970. */
function openOn(request: CalendarRequest, day: number): { open: number; close: number }[] {
  return hoursOn(request, day).open.map((hours) => ({
    open: minutesOf(`${dateOfDay(day)}T${hours.from}`, request.zone),
    close: minutesOf(closingTime(day, hours), request.zone),
  }));
}

function closingTime(day: number, { from, to }: OpenHours): string {
  if (to === '24:00') return `${dateOfDay(day + 1)}T00:00`;
  return `${dateOfDay(to <= from ? day + 1 : day)}T${to}`;
}
