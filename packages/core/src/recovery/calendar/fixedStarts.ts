import type { CalendarRequest, TimedSession } from '../Calendar.ts';
import { dayNumber } from '../dayNumber.ts';
import { minutesOf } from '../zonedTime.ts';
import { onDay } from './onDay.ts';
import type { Start } from './Start.ts';

/** The sessions that stay where they are, less those that are done by now. */
export function fixedStarts(request: CalendarRequest): readonly (Start & { forced: number })[] {
  const isDone = (fixed: TimedSession) =>
    request.done?.some(({ session, start }) => session === fixed.session && start === fixed.start);
  return (request.fixed ?? [])
    .filter((fixed) => !isDone(fixed))
    .map((fixed) => ({
      ...onDay(request, dayNumber(fixed.start.slice(0, 10))),
      at: minutesOf(fixed.start, request.zone),
      close: Number.POSITIVE_INFINITY,
      forced: request.sessions.findIndex(({ id }) => id === fixed.session),
      light: isLight(request, fixed),
    }));
}

/** Whether a session is in its light form: as it says, or else by its day. */
export function isLight(request: CalendarRequest, { start, light }: TimedSession): boolean {
  return light ?? onDay(request, dayNumber(start.slice(0, 10))).light;
}
