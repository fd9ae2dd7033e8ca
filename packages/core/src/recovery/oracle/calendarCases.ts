import type { CalendarRequest, DayHours } from '../Calendar.ts';

const day = (...from: readonly string[]): DayHours => ({
  open: from.map((hour) => ({
    from: `${hour}:00`,
    to: `${String(Number(hour) + 1).padStart(2, '0')}:00`,
  })),
});
/** Hours of a week or a longer cycle. */
export const weeks: readonly { readonly name: string; readonly days: readonly DayHours[] }[] = [
  { name: 'every evening', days: [day('18')] },
  {
    name: 'call-outs',
    days: [day('07', '18'), day(), day('18'), day('12'), day('18'), day('09'), day()],
  },
  { name: 'a cycle of five', days: [day('18'), day('18'), day(), day('08'), day('20')] },
];
/** Sessions in rotation, each with the hours its muscles need. */
export const rotations: readonly (readonly Readonly<Record<string, number>>[])[] = [
  [{ lats: 48, vasti: 72 }],
  [
    { lats: 60, biceps: 40 },
    { vasti: 72, hamstrings: 72, 'spinal-erectors': 30 },
  ],
  [{ lats: 50, biceps: 44 }, { vasti: 72 }, { biceps: 30, 'triceps-long-head': 30, lats: 20 }],
];

/** Two weeks at this rota, at most four sessions in seven days. */
export function calendarRequest(
  days: readonly DayHours[],
  rotation: readonly Readonly<Record<string, number>>[],
  order: 'as-listed' | 'any-in-round',
  length = 14,
): CalendarRequest {
  return {
    zone: 'UTC',
    firstDay: '2026-03-02',
    days: length,
    rota: { firstDay: '2026-03-02', days },
    sessions: rotation.map((muscles, i) => ({ id: `s${i}`, name: `S${i}`, minutes: 60, muscles })),
    order,
    perWeek: 4,
  };
}
