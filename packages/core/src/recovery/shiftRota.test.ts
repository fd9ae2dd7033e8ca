import { describe, expect, it } from 'vitest';
import type { CalendarRequest, DayHours } from './Calendar.ts';
import { elapsedTime } from './elapsedTime.ts';
import { planCalendar } from './planCalendar.ts';

/** A rota of 28 days: two days, two nights, five off, and so on; hours as a shift worker has them. */
const day: DayHours = { kind: 'day-shift', open: [{ from: '20:00', to: '21:15' }] };
const night: DayHours = { kind: 'night-shift', open: [{ from: '13:00', to: '15:00' }] };
const off: DayHours = { kind: 'off', open: [{ from: '10:00', to: '12:00' }] };
const cycle = (
  [
    [day, 2],
    [night, 2],
    [off, 5],
    [day, 2],
    [night, 3],
    [off, 4],
    [day, 3],
    [night, 2],
    [off, 5],
  ] as const
).flatMap(([hours, count]) => Array.from({ length: count }, () => hours));
const request: CalendarRequest = {
  zone: 'Europe/London',
  firstDay: '2026-03-02',
  days: 56,
  rota: { firstDay: '2026-03-02', days: cycle },
  rules: [
    { kind: 'day-shift', light: true, mostInARow: 1 },
    { kind: 'night-shift', noneOnTheNextDay: true },
  ],
  sessions: [{ id: 'all', name: 'Whole body', minutes: 75, muscles: { lats: 48, vasti: 48 } }],
};

describe('a shift rota', () => {
  const plan = planCalendar(request);
  const sessions = plan.kind === 'planned' ? plan.sessions : [];

  it('repeats after 28 days, half of them off', () => {
    expect(cycle).toHaveLength(28);
    expect(cycle.filter((hours) => hours === off)).toHaveLength(14);
  });

  it('gives nine to fourteen sessions in a cycle', () => {
    for (const from of ['2026-03-02', '2026-03-30']) {
      const placed = sessions.filter(({ date }) => {
        const days = elapsedTime(`${from}T00:00`, `${date}T00:00`, 'UTC').calendarDays;
        return days >= 0 && days < 28;
      });
      expect(placed.length).toBeGreaterThanOrEqual(9);
      expect(placed.length).toBeLessThanOrEqual(14);
    }
  });

  it('leaves 48 elapsed hours between sessions, over the clock change too', () => {
    for (const [i, { start }] of sessions.slice(1).entries()) {
      const { hours } = elapsedTime(sessions[i]?.start ?? '', start, request.zone);
      expect(hours).toBeGreaterThanOrEqual(48);
    }
  });

  it('holds the rules for each kind of day', () => {
    for (const { dayKind, light } of sessions) expect(light).toBe(dayKind === 'day-shift');
    const nights = sessions.filter(({ dayKind }) => dayKind === 'night-shift');
    for (const [i, { date }] of nights.slice(1).entries()) {
      const { calendarDays } = elapsedTime(`${nights[i]?.date}T00:00`, `${date}T00:00`, 'UTC');
      expect(calendarDays).toBeGreaterThan(1);
    }
  });

  it('re-plans only what a swapped shift touches', () => {
    const swapped = planCalendar({
      ...request,
      otherHours: [{ from: '2026-03-14', to: '2026-03-14', hours: { ...night, open: [] } }],
      keep: sessions,
    });
    const kept = swapped.kind === 'planned' ? swapped.sessions : [];
    const moved = kept.filter(({ start }) => !sessions.some((other) => other.start === start));
    expect(kept.length).toBeGreaterThanOrEqual(sessions.length - 1);
    expect(moved.length).toBeLessThanOrEqual(1);
  });
});
