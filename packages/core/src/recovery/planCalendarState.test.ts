import { describe, expect, it } from 'vitest';
import type { CalendarRequest, DayHours, RotaSession, TimedSession } from './Calendar.ts';
import { planCalendar } from './planCalendar.ts';

const evening: DayHours = { open: [{ from: '18:00', to: '19:30' }] };
const all = (hours: number): RotaSession => ({
  id: 'all',
  name: 'Whole body',
  minutes: 60,
  muscles: { lats: hours },
});
const pull: RotaSession = { id: 'pull', name: 'Pull', minutes: 60, muscles: { lats: 72 } };
const legs: RotaSession = { id: 'legs', name: 'Legs', minutes: 60, muscles: { vasti: 48 } };
const base: CalendarRequest = {
  zone: 'UTC',
  firstDay: '2026-03-02',
  days: 7,
  rota: { firstDay: '2026-03-02', days: [evening] },
  sessions: [all(48)],
};
const sessionsOf = (request: CalendarRequest) => {
  const plan = planCalendar(request);
  if (plan.kind !== 'planned') throw new Error(plan.message);
  return plan.sessions;
};
/** The days of March with their session. */
const placed = (request: CalendarRequest) =>
  sessionsOf(request).map(({ session, date }) => `${Number(date.slice(8))} ${session}`);

describe('what was done before a plan', () => {
  const both: CalendarRequest = { ...base, days: 3, sessions: [pull, legs] };

  it('decides which session comes next, and when', () => {
    // legs done out of turn: pull is all that the round still owes, and begins the next, 72 h later
    const done = [{ session: 'legs', start: '2026-03-01T18:00' }];
    expect(placed({ ...both, days: 5, done })).toEqual(['2 pull', '5 pull', '6 legs']);
    expect(sessionsOf({ ...both, days: 5, done })[2]?.gaps).toEqual([
      { muscle: 'vasti', hours: 120, hoursNeeded: 48, lastTrained: '2026-03-01T18:00' },
    ]);
  });

  it('may come in any order', () => {
    const done = [
      { session: 'legs', start: '2026-03-01T18:00' },
      { session: 'pull', start: '2026-02-28T18:00' },
    ];
    // a whole round: pull is next, 72 h after the 28th
    expect(placed({ ...both, done })).toEqual(['3 pull', '4 legs']);
    expect(placed({ ...both, done: done.toReversed() })).toEqual(['3 pull', '4 legs']);
    const [a, b, c] = ['pull 20', 'legs 22', 'pull 25'].map((one) => ({
      session: one.slice(0, 4),
      start: `2026-02-${one.slice(5)}T18:00`,
    })) as [TimedSession, TimedSession, TimedSession];
    for (const order of [
      [a, b, c],
      [a, c, b],
    ]) {
      expect(placed({ ...both, days: 1, done: order })).toEqual(['2 legs']);
    }
  });

  it('uses the first start of the plan when it can', () => {
    const done = [{ session: 'all', start: '2026-02-20T18:00' }];
    expect(sessionsOf({ ...base, days: 1, done })[0].start).toBe('2026-03-02T18:00');
  });

  it('counts in the form of its day, unless it says which', () => {
    const session = { ...all(48), light: { minutes: 30, muscles: { lats: 24 } } };
    const after = (light?: boolean) => {
      const start = { session: 'all', start: '2026-03-01T18:00' };
      const sessions = sessionsOf({
        ...base,
        sessions: [session],
        lightDates: [{ from: '2026-02-25', to: '2026-03-01' }],
        done: [light === undefined ? start : { ...start, light }],
      });
      return [sessions[0].start.slice(8), sessions[0].gaps[0]?.hoursNeeded];
    };
    expect(after()).toEqual(['02T18:00', 24]);
    expect(after(true)).toEqual(['02T18:00', 24]);
    expect(after(false)).toEqual(['03T18:00', 48]);
  });

  it('counts for the week and for the run of days', () => {
    const done = [{ session: 'all', start: '2026-03-02T07:00' }];
    const request = { ...base, sessions: [all(20)], done };
    expect(placed({ ...request, perWeek: 2 })).toHaveLength(1);
    const night = { ...evening, kind: 'night' };
    const rules = [{ kind: 'night', mostInARow: 2 }];
    const rota = { firstDay: '2026-03-02', days: [night] };
    expect(placed({ ...request, rota, rules })).toHaveLength(1);
  });
});

describe('fixed sessions', () => {
  const fixed = (...days: readonly string[]) =>
    days.map((day) => ({ session: 'all', start: `2026-03-${day}T18:00` }));

  it('are what the others are spread around', () => {
    // two a week are three or four days apart; two days would be allowed and sooner
    expect(placed({ ...base, perWeek: 2, fixed: fixed('03') })).toEqual(['3 all', '6 all']);
  });

  it('hold on the first and the last day, and are no matter of the plan outside', () => {
    expect(placed({ ...base, perWeek: 1, fixed: fixed('02') })).toEqual(['2 all']);
    expect(placed({ ...base, perWeek: 1, fixed: fixed('08') })).toEqual(['8 all']);
    expect(placed({ ...base, perWeek: 1, fixed: fixed('01', '09') })).toEqual(['2 all']);
  });

  it('can be any session of the rotation, out of its turn', () => {
    const second = [{ session: 'legs', start: '2026-03-02T18:00' }];
    const plan = placed({ ...base, days: 2, sessions: [pull, legs], fixed: second });
    expect(plan).toEqual(['2 legs', '3 pull']);
  });

  it('are done in the form of their day, unless they say which', () => {
    const session = { ...all(48), light: { minutes: 30, muscles: { lats: 24 } } };
    const ends = (light?: boolean) => {
      const one = { session: 'all', start: '2026-03-03T18:00' };
      const held = [light === undefined ? one : { ...one, light }];
      const lightDates = [{ from: '2026-03-03', to: '2026-03-03' }];
      const request = { ...base, sessions: [session], perWeek: 1, lightDates, fixed: held };
      return sessionsOf(request)[0].end.slice(8);
    };
    expect(ends()).toBe('03T18:30');
    expect(ends(true)).toBe('03T18:30');
    expect(ends(false)).toBe('03T19:00');
  });

  it('cannot both stay on one day, nor on the day of a session that was done', () => {
    const morning = { session: 'all', start: '2026-03-04T07:00' };
    const free = { ...base, sessions: [all(0)] };
    const clash = {
      kind: 'fixed-sessions-conflict',
      shortfalls: [],
      conflicts: [],
    };
    expect(planCalendar({ ...free, fixed: [morning, ...fixed('04')] })).toMatchObject(clash);
    expect(planCalendar({ ...free, done: [morning], fixed: fixed('04') })).toMatchObject(clash);
  });

  it('are over once they are done', () => {
    const request = { ...base, firstDay: '2026-03-04', days: 3, fixed: fixed('04') };
    expect(placed({ ...request, done: fixed('04') })).toEqual(['6 all']);
    const other = [{ session: 'legs', start: '2026-03-04T18:00' }];
    const plan = planCalendar({ ...request, sessions: [all(48), legs], done: other });
    expect(plan.kind).toBe('fixed-sessions-conflict');
  });

  it('name what they train too early, in time order and in the form of their day', () => {
    const session = { ...all(48), light: { minutes: 30, muscles: { lats: 24 } } };
    const request = { ...base, sessions: [session], fixed: fixed('06', '05', '04') };
    const plan = planCalendar({
      ...request,
      lightDates: [{ from: '2026-03-04', to: '2026-03-04' }],
    });
    expect(plan.kind !== 'planned' && plan.conflicts.map(({ start }) => start.slice(8))).toEqual([
      '06T18:00',
    ]);
  });
});

describe('sessions of one night and the next', () => {
  it('never overlap, though they share no muscle', () => {
    // the 2nd is open till 2:00 and the 3rd from 0:00: after 23:30 to 0:30 the next is 0:30 at the soonest
    const rota = {
      firstDay: '2026-03-02',
      days: [
        { open: [{ from: '23:30', to: '02:00' }] },
        { open: [{ from: '00:00', to: '24:00' }] },
      ],
    };
    const [first, second] = sessionsOf({ ...base, days: 2, rota, sessions: [pull, legs] });
    expect([first?.end, second?.start]).toEqual(['2026-03-03T00:30', '2026-03-03T00:30']);
  });
});

describe('hours', () => {
  it('may last to the end of the day', () => {
    const rota = { firstDay: '2026-03-02', days: [{ open: [{ from: '23:00', to: '24:00' }] }] };
    expect(sessionsOf({ ...base, days: 1, rota })[0].end).toBe('2026-03-03T00:00');
  });

  it('are passed over by a session that they are too short for', () => {
    const short = { open: [{ from: '18:00', to: '18:45' }] };
    const rota = { firstDay: '2026-03-02', days: [evening, short, evening] };
    const brief = { ...legs, minutes: 45 };
    const request = { ...base, days: 3, rota, sessions: [pull, brief] };
    expect(placed(request)).toEqual(['2 pull', '3 legs']);
    expect(placed({ ...request, sessions: [brief, pull] })).toEqual(['2 legs', '4 pull']);
  });
});
