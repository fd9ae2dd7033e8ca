import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CalendarRequest, DayHours } from './Calendar.ts';
import { planCalendar } from './planCalendar.ts';
import { possibleStarts } from './possibleStarts.ts';

const dates = ['2026-03-26', '2026-03-27', '2026-03-28', '2026-03-29', '2026-03-30', '2026-03-31'];
const day = fc.record({
  open: fc.constantFrom(
    [],
    [{ from: '07:00', to: '08:00' }],
    [{ from: '18:00', to: '20:00' }],
    [
      { from: '07:00', to: '08:00' },
      { from: '18:00', to: '19:00' },
    ],
  ),
  kind: fc.constantFrom('off', 'night'),
  gym: fc.constantFrom('boathouse', 'hotel'),
});
const sessions = [
  { id: 'a', name: 'A', minutes: 60, muscles: { lats: 47, biceps: 24 }, gyms: ['boathouse'] },
  {
    id: 'b',
    name: 'B',
    minutes: 60,
    muscles: { vasti: 48, biceps: 24 },
    light: { minutes: 60, muscles: { vasti: 20 } },
  },
];
const timed = (from: readonly string[]) =>
  fc.uniqueArray(
    fc.record({
      session: fc.constantFrom('a', 'b'),
      start: fc
        .tuple(fc.constantFrom(...from), fc.constantFrom('07:00', '18:00'))
        .map(([date, time]) => `${date}T${time}`),
    }),
    { maxLength: 2, selector: ({ start }) => start.slice(0, 10) },
  );
const requests: fc.Arbitrary<CalendarRequest & { rota: { days: readonly DayHours[] } }> = fc.record(
  {
    zone: fc.constantFrom('Europe/Berlin', 'UTC'),
    firstDay: fc.constant(dates[0] as string),
    days: fc.constant(dates.length),
    rota: fc.record({
      firstDay: fc.constant(dates[0] as string),
      days: fc.array(day, { minLength: dates.length, maxLength: dates.length }),
    }),
    sessions: fc.constant(sessions),
    perWeek: fc.integer({ min: 1, max: 4 }),
    rules: fc.constantFrom(
      [],
      [{ kind: 'night', noneOnTheNextDay: true, light: true }],
      [{ kind: 'night', mostInARow: 1 }],
    ),
    startEveryMinutes: fc.constant(60),
    done: timed(['2026-03-24', '2026-03-25']),
    fixed: timed(dates),
  },
);

/** Every full hour at which the session fits into the hours and the gym, held there and planned. */
function byPlanning(request: CalendarRequest, session: string): string[] {
  return dates.flatMap((date, i) => {
    const { open = [], gym = '' } = request.rota.days[i] ?? {};
    if (session === 'a' && gym !== 'boathouse') return [];
    return open
      .flatMap(({ from, to }) => {
        const hours = Number(to.slice(0, 2)) - Number(from.slice(0, 2));
        return Array.from({ length: hours }, (_, hour) => Number(from.slice(0, 2)) + hour);
      })
      .map((hour) => `${date}T${String(hour).padStart(2, '0')}:00`)
      .filter((start) => {
        const fixed = [...(request.fixed ?? []), { session, start }];
        return planCalendar({ ...request, fixed }).kind === 'planned';
      });
  });
}

describe('possibleStarts', () => {
  it('are the starts at which a calendar could hold the session beside those that are fixed', () => {
    fc.assert(
      fc.property(requests, fc.constantFrom('a', 'b'), (request, session) => {
        fc.pre(planCalendar(request).kind !== 'fixed-sessions-conflict');
        expect(possibleStarts(request, session)).toEqual(byPlanning(request, session));
      }),
    );
  });
});
