import { describe, expect, it } from 'vitest';
import type { CalendarRequest, DayHours, RotaSession } from './Calendar.ts';
import { elapsedTime } from './elapsedTime.ts';
import { planCalendar } from './planCalendar.ts';
import { possibleStarts } from './possibleStarts.ts';
import { smallestChanges } from './smallestChanges.ts';

const evening: DayHours = { open: [{ from: '18:00', to: '19:30' }] };
const off: DayHours = { open: [] };
const all = (hours: number): RotaSession => ({
  id: 'all',
  name: 'Whole body',
  minutes: 60,
  muscles: { lats: hours, vasti: hours },
});
const base: CalendarRequest = {
  zone: 'Europe/Berlin',
  firstDay: '2026-03-02',
  days: 14,
  rota: { firstDay: '2026-03-02', days: Array.from({ length: 7 }, () => evening) },
  sessions: [all(48)],
};
const starts = (request: CalendarRequest) => {
  const plan = planCalendar(request);
  return plan.kind === 'planned' ? plan.sessions.map(({ start }) => start) : [];
};

describe('planCalendar', () => {
  it('spreads two sessions a week as three and four days: 72 and 96 hours', () => {
    const placed = starts({ ...base, perWeek: 2 });
    expect(placed).toEqual([
      '2026-03-02T18:00',
      '2026-03-05T18:00',
      '2026-03-09T18:00',
      '2026-03-12T18:00',
    ]);
    const gaps = placed.slice(1).map((to, i) => elapsedTime(placed[i] ?? '', to, base.zone).hours);
    expect(gaps).toEqual([72, 96, 72]);
  });

  it('trains as often as the muscles allow when no number is given', () => {
    expect(starts({ ...base, days: 7 }).map((start) => start.slice(8, 10))).toEqual([
      '02',
      '04',
      '06',
      '08',
    ]);
  });

  it('lets sessions without a common muscle follow each other, and says the gap by muscle', () => {
    const plan = planCalendar({
      ...base,
      days: 4,
      sessions: [
        { id: 'pull', name: 'Pull', minutes: 60, muscles: { lats: 48, biceps: 40 } },
        { id: 'legs', name: 'Legs', minutes: 60, muscles: { vasti: 60, hamstrings: 60 } },
      ],
    });
    if (plan.kind !== 'planned') throw new Error(plan.message);
    expect(plan.sessions.map(({ session, date }) => [session, date.slice(8)])).toEqual([
      ['pull', '02'],
      ['legs', '03'],
      ['pull', '04'],
    ]);
    expect(plan.sessions[1]?.gaps).toEqual([]);
    expect(plan.sessions[2]?.gaps).toEqual([
      { muscle: 'lats', hours: 48, hoursNeeded: 48, lastTrained: '2026-03-02T18:00' },
      { muscle: 'biceps', hours: 48, hoursNeeded: 40, lastTrained: '2026-03-02T18:00' },
    ]);
  });

  it('begins with what was missed, counts on and never doubles up in a day', () => {
    const plan = planCalendar({
      ...base,
      firstDay: '2026-03-05',
      days: 7,
      sessions: [
        { ...all(24), id: 'heavy', name: 'Heavy' },
        { ...all(24), id: 'volume', name: 'Volume' },
      ],
      done: [{ session: 'heavy', start: '2026-03-02T18:00' }],
    });
    if (plan.kind !== 'planned') throw new Error(plan.message);
    expect(plan.sessions[0].session).toBe('volume');
    expect(plan.sessions[0].number).toBe(2);
    expect(new Set(plan.sessions.map(({ date }) => date)).size).toBe(plan.sessions.length);
  });

  it('spreads three sessions a week as Monday, Wednesday and Friday', () => {
    const days = starts({ ...base, perWeek: 3 }).map((start) => start.slice(8, 10));
    expect(days).toEqual(['02', '04', '06', '09', '11', '13']);
  });

  it('places 36 sessions in twelve weeks, any two at least 48 h apart', () => {
    const placed = starts({ ...base, days: 84, perWeek: 3 });
    expect(placed).toHaveLength(36);
    for (const [i, to] of placed.slice(1).entries()) {
      expect(elapsedTime(placed[i] ?? '', to, base.zone).hours).toBeGreaterThanOrEqual(48);
    }
  });

  it('keeps an earlier plan where a swapped shift does not touch it', () => {
    const before = planCalendar({ ...base, perWeek: 3 });
    if (before.kind !== 'planned') throw new Error(before.message);
    const after = planCalendar({
      ...base,
      perWeek: 3,
      otherHours: [{ from: '2026-03-04', to: '2026-03-04', hours: off }],
      keep: before.sessions,
    });
    if (after.kind !== 'planned') throw new Error(after.message);
    const moved = after.sessions.filter(
      ({ start }) => !before.sessions.some((session) => session.start === start),
    );
    expect(after.sessions).toHaveLength(before.sessions.length);
    // the 4th has to go; on the 5th it leaves the 6th no 48 h, and the 7th still leaves the 9th enough
    expect(moved.map(({ date }) => date.slice(8))).toEqual(['05', '07']);
  });

  it('holds fixed sessions, and says so when they cannot hold', () => {
    const fixed = [{ session: 'all', start: '2026-03-03T07:00' }];
    expect(starts({ ...base, days: 4, fixed })).toContain('2026-03-03T07:00');
    const clash = planCalendar({
      ...base,
      fixed: [...fixed, { session: 'all', start: '2026-03-04T07:00' }],
    });
    expect(clash.kind).toBe('fixed-sessions-conflict');
    expect(clash.kind !== 'planned' && clash.conflicts[0]?.earliest).toBe('2026-03-05T07:00');
  });

  it('waits for muscles that other work keeps busy', () => {
    const notReadyBefore = { vasti: '2026-03-04T20:00:00Z', chest: '2026-03-09T12:00:00Z' };
    expect(starts({ ...base, days: 5, notReadyBefore })).toEqual(['2026-03-05T18:00']);
  });

  it('goes to the gym that a session needs, and to another one on a trip', () => {
    const requestFor = (gyms: readonly string[]): CalendarRequest => ({
      ...base,
      days: 7,
      perWeek: 7,
      sessions: [{ ...all(20), gyms }],
      rota: { firstDay: '2026-03-02', days: [{ ...evening, gym: 'boathouse' }] },
      otherHours: [{ from: '2026-03-04', to: '2026-03-06', hours: { ...evening, gym: 'hotel' } }],
    });
    expect(starts(requestFor(['boathouse']))).toHaveLength(4);
    const plan = planCalendar(requestFor(['boathouse', 'hotel']));
    expect(plan.kind === 'planned' && plan.sessions.map(({ gym }) => gym)[2]).toBe('hotel');
  });

  it('does sessions in their light form in a light week, and lets them come closer', () => {
    const session = { ...all(60), light: { minutes: 30, muscles: { lats: 24, vasti: 24 } } };
    const plan = planCalendar({
      ...base,
      sessions: [session],
      lightDates: [{ from: '2026-03-09', to: '2026-03-15' }],
    });
    if (plan.kind !== 'planned') throw new Error(plan.message);
    const [full, light] = [false, true].map((form) =>
      plan.sessions.filter((placed) => placed.light === form),
    );
    // a third full session on the 8th would push the light ones to the 11th: 3 + 5 against 2 + 7
    expect(full).toHaveLength(2);
    expect(light).toHaveLength(7);
    expect(light?.[0]?.end).toBe('2026-03-09T18:30');
  });

  it('counts a session over midnight to the day it starts on', () => {
    const plan = planCalendar({
      ...base,
      firstDay: '2026-05-05',
      days: 1,
      rota: { firstDay: '2026-05-05', days: [{ open: [{ from: '23:30', to: '01:00' }] }] },
      sessions: [{ ...all(48), minutes: 70 }],
    });
    if (plan.kind !== 'planned') throw new Error(plan.message);
    const [{ date, start, end, startsAt, endsAt }] = plan.sessions;
    expect([date, start, end]).toEqual(['2026-05-05', '2026-05-05T23:30', '2026-05-06T00:40']);
    expect((Date.parse(endsAt) - Date.parse(startsAt)) / 60_000).toBe(70);
  });

  it('says what stood in the way, day by day, when a week falls short', () => {
    const request: CalendarRequest = {
      ...base,
      days: 7,
      perWeek: 3,
      rota: { firstDay: '2026-03-02', days: [evening, evening, evening, off, off, off, off] },
    };
    const plan = planCalendar(request);
    if (plan.kind !== 'planned') throw new Error(plan.message);
    const [week] = plan.shortfalls;
    expect(week).toMatchObject({ from: '2026-03-02', asked: 3, placed: 2 });
    expect(week?.obstacles.map(({ date, reason }) => [date.slice(8), reason])).toEqual([
      ['03', 'not-ready'],
      ['05', 'no-hours'],
      ['06', 'no-hours'],
      ['07', 'no-hours'],
      ['08', 'no-hours'],
    ]);
    expect(smallestChanges(request)).toEqual([
      { kind: 'less-work', hours: 24, muscles: ['lats', 'vasti'], sessions: 3 },
      { kind: 'another-day', date: '2026-03-06', open: evening.open[0], sessions: 3 },
    ]);
  });

  it('says that nothing fits, and which minutes would change that', () => {
    const request: CalendarRequest = { ...base, sessions: [{ ...all(48), minutes: 100 }] };
    const plan = planCalendar(request);
    expect(plan.kind).toBe('nothing-fits');
    expect(plan.shortfalls[0]?.obstacles[0]?.reason).toBe('too-short');
    expect(smallestChanges(request)).toEqual([
      { kind: 'shorter-sessions', minutes: 10, sessions: 7 },
    ]);
  });

  it('refuses requests that no calendar can be made of', () => {
    expect(() => planCalendar({ ...base, zone: 'Europe/Atlantis' })).toThrow(RangeError);
    expect(() => planCalendar({ ...base, firstDay: '2026-02-30' })).toThrow(RangeError);
    expect(() => planCalendar({ ...base, sessions: [] })).toThrow(RangeError);
    expect(() => planCalendar({ ...base, sessions: [all(48), all(24)] })).toThrow(RangeError);
    expect(() =>
      planCalendar({ ...base, done: [{ session: 'arms', start: '2026-03-01T18:00' }] }),
    ).toThrow(RangeError);
  });
});

describe('possibleStarts', () => {
  it('offers Friday and Saturday for a missed Thursday, before Monday', () => {
    const request: CalendarRequest = {
      ...base,
      firstDay: '2026-03-06',
      days: 4,
      done: [{ session: 'all', start: '2026-03-02T18:00' }],
      fixed: [{ session: 'all', start: '2026-03-09T18:00' }],
      startEveryMinutes: 90,
    };
    expect(possibleStarts(request, 'all')).toEqual(['2026-03-06T18:00', '2026-03-07T18:00']);
  });

  it('refuses what planCalendar refuses, and a session that is not in the rotation', () => {
    expect(() => possibleStarts(base, 'arms')).toThrow(
      'possibleStarts: no session of the rotation has the id arms',
    );
    expect(() => possibleStarts({ ...base, days: 0 }, 'all')).toThrow('possibleStarts: days must');
    expect(() => smallestChanges({ ...base, days: 0 })).toThrow('smallestChanges: days must');
    expect(() => planCalendar({ ...base, days: 0 })).toThrow('planCalendar: days must');
  });
});
