import { expect, it } from 'vitest';
import type { CalendarRequest } from './Calendar.ts';
import { planCalendar } from './planCalendar.ts';

/** The limit is that of a form that answers while it is typed in; it takes about a fifth of it. */
it('plans four weeks of three sessions in under 50 ms', () => {
  const request: CalendarRequest = {
    zone: 'Europe/Berlin',
    firstDay: '2026-03-02',
    days: 28,
    rota: { firstDay: '2026-03-02', days: [{ open: [{ from: '18:00', to: '20:30' }] }] },
    sessions: [
      { id: 'pull', name: 'Pull', minutes: 60, muscles: { lats: 50, biceps: 44, grip: 20 } },
      { id: 'legs', name: 'Legs', minutes: 60, muscles: { vasti: 72, glutes: 60 } },
      { id: 'mixed', name: 'Mixed', minutes: 60, muscles: { biceps: 30, lats: 20, glutes: 22 } },
    ],
    perWeek: 3,
  };
  const times = Array.from({ length: 7 }, () => {
    const before = performance.now();
    const plan = planCalendar(request);
    expect(plan.kind === 'planned' && plan.sessions).toHaveLength(12);
    return performance.now() - before;
  });
  expect(times.sort((a, b) => a - b)[3]).toBeLessThan(50);
});
