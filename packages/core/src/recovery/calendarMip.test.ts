import { describe, expect, it } from 'vitest';
import type { CalendarRequest, DayHours } from './Calendar.ts';
import { type MipQuestion, mostSessionsByMip } from './oracle/mostSessionsByMip.ts';
import { planCalendar } from './planCalendar.ts';

const day = (...from: readonly string[]): DayHours => ({
  open: from.map((hour) => ({
    from: `${hour}:00`,
    to: `${String(Number(hour) + 1).padStart(2, '0')}:00`,
  })),
});
const weeks: readonly { readonly name: string; readonly days: readonly DayHours[] }[] = [
  { name: 'every evening', days: [day('18')] },
  {
    name: 'call-outs',
    days: [day('07', '18'), day(), day('18'), day('12'), day('18'), day('09'), day()],
  },
  { name: 'a cycle of five', days: [day('18'), day('18'), day(), day('08'), day('20')] },
];
const rotations: readonly (readonly Readonly<Record<string, number>>[])[] = [
  [{ lats: 48, vasti: 72 }],
  [
    { lats: 60, biceps: 40 },
    { vasti: 72, hamstrings: 72, 'spinal-erectors': 30 },
  ],
  [{ lats: 50, biceps: 44 }, { vasti: 72 }, { biceps: 30, 'triceps-long-head': 30, lats: 20 }],
];

/** The same question from the clock: UTC, where a day has 24 hours. */
function questionOf(request: CalendarRequest): MipQuestion {
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

describe('planCalendar against a general mixed-integer solver', () => {
  for (const { name, days } of weeks) {
    for (const rotation of rotations) {
      for (const order of ['as-listed', 'any-in-round'] as const) {
        it(`places as many sessions: ${name}, ${rotation.length} in rotation, ${order}`, async () => {
          const request: CalendarRequest = {
            zone: 'UTC',
            firstDay: '2026-03-02',
            days: 14,
            rota: { firstDay: '2026-03-02', days },
            sessions: rotation.map((muscles, i) => ({
              id: `s${i}`,
              name: `S${i}`,
              minutes: 60,
              muscles,
            })),
            order,
            perWeek: 4,
          };
          const plan = planCalendar(request);
          const placed = plan.kind === 'planned' ? plan.sessions.length : 0;
          expect(placed).toBe(await mostSessionsByMip(questionOf(request)));
        });
      }
    }
  }
});
