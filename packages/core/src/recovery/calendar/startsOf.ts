import type { CalendarRequest, DateRange, OpenHours } from '../Calendar.ts';
import { dateOfDay, dayNumber } from '../dayNumber.ts';
import { minutesOf } from '../zonedTime.ts';
import { hoursOn } from './hoursOn.ts';
import { type Start, weekOf } from './Start.ts';

/**
 * Every moment of the plan at which a session could begin, in time order: from each opening on at
 * equal elapsed distances, so that a clock change neither loses nor doubles one.
 */
export function startsOf(request: CalendarRequest): readonly Start[] {
  const first = dayNumber(request.firstDay);
  const last = first + request.days - 1;
  const fixed = (request.fixed ?? []).map((session) => ({
    ...onDay(request, dayNumber(session.start.slice(0, 10))),
    at: minutesOf(session.start, request.zone),
    close: Number.POSITIVE_INFINITY,
    forced: request.sessions.findIndex(({ id }) => id === session.session),
    ...(session.light === undefined ? {} : { light: session.light }),
  }));
  const shortest = Math.min(
    ...request.sessions.flatMap(({ minutes, light }) => [minutes, light?.minutes ?? minutes]),
  );
  const every = request.startEveryMinutes ?? 30;
  const starts: Start[] = fixed.filter(({ day }) => first <= day && day <= last);
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

/** What a day says of every session that starts on it. */
export function onDay(request: CalendarRequest, day: number): Omit<Start, 'at' | 'close'> {
  const { kind, gym } = hoursOn(request, day);
  const rule = request.rules?.find((candidate) => candidate.kind === kind);
  const covers = ({ from, to }: DateRange) => dayNumber(from) <= day && day <= dayNumber(to);
  return {
    day,
    week: weekOf(day),
    run: rule ? runOf(request, day, rule.kind) : day,
    light: rule?.light === true || request.lightDates?.some(covers) === true,
    ...(rule ? { rule } : {}),
    ...(gym === undefined ? {} : { gym }),
    ...(kind === undefined ? {} : { dayKind: kind }),
  };
}

/** The first day of the unbroken run of days of one kind; a run is not followed further back than 400 days. */
function runOf(request: CalendarRequest, day: number, kind: string): number {
  const furthest = dayNumber(request.firstDay) - 400;
  let run = day;
  while (run > furthest && hoursOn(request, run - 1).kind === kind) run -= 1;
  return run;
}
