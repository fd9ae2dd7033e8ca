import type { CalendarRequest, DayHours } from '../Calendar.ts';
import { dayNumber } from '../dayNumber.ts';

/** The hours of a date: the last entry of `otherHours` that covers it, or else its place in the rota. */
export function hoursOn(request: CalendarRequest, day: number): DayHours {
  const other = request.otherHours?.findLast(
    ({ from, to }) => dayNumber(from) <= day && day <= dayNumber(to),
  );
  if (other) return other.hours;
  const { firstDay, days } = request.rota;
  const place = (day - dayNumber(firstDay)) % days.length;
  return days[place < 0 ? place + days.length : place] as DayHours;
}
