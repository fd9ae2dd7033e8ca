import { describe, expect, it } from 'vitest';
import type { CalendarRequest, DayHours } from './Calendar.ts';
import { planCalendar } from './planCalendar.ts';
import { session } from './rota.testing.ts';

const at = (from: string, to: string, part: Partial<DayHours> = {}): DayHours => ({
  open: [{ from, to }],
  ...part,
});
const evening = at('18:00', '19:00');
const off: DayHours = { open: [] };
const base: CalendarRequest = {
  zone: 'Europe/Berlin',
  firstDay: '2026-03-02',
  days: 7,
  rota: { firstDay: '2026-03-02', days: [evening] },
  sessions: [session('all', { lats: 48 })],
  perWeek: 3,
};
const week = (...days: readonly DayHours[]) => ({ firstDay: '2026-03-02', days });
const shortfall = (part: Partial<CalendarRequest>) => {
  const [first, ...others] = planCalendar({ ...base, ...part }).shortfalls;
  expect(others).toEqual([]);
  return first;
};
const obstacles = (part: Partial<CalendarRequest>) =>
  shortfall(part)?.obstacles.map(({ date, reason }) => `${date.slice(8)} ${reason}`);

describe('what kept a day free', () => {
  it('is a muscle that is not ready, with the time when it is', () => {
    // Monday and Tuesday only: 50 h after Monday 18:00 is Wednesday 20:00
    const part = {
      rota: week(evening, evening, off, off, off, off, off),
      sessions: [session('all', { lats: 50 })],
    };
    expect(obstacles(part)?.slice(0, 2)).toEqual(['03 not-ready', '04 no-hours']);
    expect(shortfall(part)?.obstacles.slice(0, 2)).toEqual([
      { date: '2026-03-03', session: 'all', reason: 'not-ready', readyAt: '2026-03-04T20:00' },
      { date: '2026-03-04', session: 'all', reason: 'no-hours' },
    ]);
  });

  it('is the next session when it would leave that one too little time', () => {
    // Monday, Tuesday fixed: Monday would leave 24 of 48 h
    const part = {
      rota: week(evening, evening, off, off, off, off, off),
      fixed: [{ session: 'all', start: '2026-03-03T18:00' }],
    };
    expect(obstacles(part)?.[0]).toBe('02 before-the-next');
  });

  it('is the rule for the day, the gym, or hours that are too short', () => {
    const sessions = [{ ...session('all', { lats: 20 }), gyms: ['boathouse'] }];
    const home = { gym: 'boathouse' };
    const night = { ...home, kind: 'night' };
    expect(
      obstacles({
        sessions,
        perWeek: 7,
        fixed: [{ session: 'all', start: '2026-03-02T18:00' }],
        rules: [{ kind: 'night', noneOnTheNextDay: true }],
        rota: week(
          at('18:00', '19:00', night),
          at('18:00', '19:00', night),
          at('18:00', '19:00', { gym: 'hotel' }),
          evening,
          at('18:00', '18:59', home),
          at('18:00', '19:00', home),
          off,
        ),
      }),
    ).toEqual(['03 day-rule', '04 other-gym', '05 other-gym', '06 too-short', '08 no-hours']);
  });

  it('names the session that was due, and the soonest of all that were', () => {
    const sessions = [session('pull', { lats: 72 }), session('legs', { vasti: 90 })];
    const part = {
      sessions,
      perWeek: 7,
      done: [
        { session: 'pull', start: '2026-02-28T18:00' },
        { session: 'legs', start: '2026-03-01T18:00' },
      ],
    };
    const [first] = shortfall(part)?.obstacles ?? [];
    // pull is ready on the 3rd at 18:00, legs on the 5th at 12:00
    expect(first).toMatchObject({ session: 'pull', readyAt: '2026-03-03T18:00' });
    const [any] = shortfall({ ...part, order: 'any-in-round' })?.obstacles ?? [];
    expect(any).toMatchObject({ session: 'pull', readyAt: '2026-03-03T18:00' });
  });
});

describe('shortfalls', () => {
  it('are told of whole weeks alone, each by itself', () => {
    const tuesdays = week(off, evening, off, off, off, off, off);
    const plan = planCalendar({
      ...base,
      days: 16,
      firstDay: '2026-02-28',
      rota: tuesdays,
      perWeek: 2,
    });
    // Saturday to Sunday a fortnight later: two whole weeks from the 2nd and the 9th
    expect(plan.shortfalls.map(({ from, asked, placed }) => [from, asked, placed])).toEqual([
      ['2026-03-02', 2, 1],
      ['2026-03-09', 2, 1],
    ]);
    expect(plan.shortfalls.map(({ obstacles: { length } }) => length)).toEqual([6, 6]);
    const shorter = planCalendar({ ...base, days: 6, rota: tuesdays, perWeek: 2 });
    expect(shorter.shortfalls).toEqual([]);
  });

  it('are none without a number to reach', () => {
    const { perWeek: _, ...any } = base;
    expect(planCalendar(any).shortfalls).toEqual([]);
  });

  it('count what was done in the week', () => {
    const done = [{ session: 'all', start: '2026-03-02T07:00' }];
    const rota = week(evening, off, off, evening, off, off, off);
    expect(shortfall({ rota, done, perWeek: 2 })).toBeUndefined();
    expect(shortfall({ rota, done })).toMatchObject({ asked: 3, placed: 2 });
    expect(obstacles({ rota, done })?.[0]).toBe('03 no-hours');
  });

  it('are the whole plan when nothing fits, less the days that the week has no room for', () => {
    const done = [{ session: 'all', start: '2026-03-02T07:00' }];
    const part = { firstDay: '2026-03-03', days: 3, perWeek: 1, done };
    expect(shortfall({ ...part, rota: week(evening, evening, off) })).toEqual({
      from: '2026-03-03',
      asked: 1,
      placed: 0,
      obstacles: [{ date: '2026-03-04', session: 'all', reason: 'no-hours' }],
    });
  });
});
