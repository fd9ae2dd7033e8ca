import type { CalendarRequest } from '../Calendar.ts';
import type { MipQuestion } from './calendarProgram.ts';

/** The same question from the clock: UTC, where a day has 24 hours. */
export function calendarQuestion(request: CalendarRequest): MipQuestion {
  const first = Date.parse(`${request.firstDay}T00:00Z`) / 864e5;
  const starts = Array.from({ length: request.days }, (_, i) => i).flatMap((i) =>
    (request.rota.days[i % request.rota.days.length]?.open ?? []).map(({ from }) => ({
      at: (first + i) * 1440 + 60 * Number(from.slice(0, 2)),
      day: first + i,
      week: Math.floor((first + i + 3) / 7),
    })),
  );
  return {
    starts,
    perWeek: request.perWeek ?? 7,
    order: request.order ?? 'as-listed',
    pauses: request.sessions.map((a) =>
      request.sessions.map((b) =>
        Math.max(
          0,
          ...Object.entries(a.muscles).map(([muscle, hours]) =>
            muscle in b.muscles ? 60 * hours : 0,
          ),
        ),
      ),
    ),
  };
}
