import type { CalendarRequest, DateRange } from '../Calendar.ts';
import { dayNumber } from '../dayNumber.ts';
import { hoursOn } from './hoursOn.ts';
import { type Start, weekOf } from './Start.ts';

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
