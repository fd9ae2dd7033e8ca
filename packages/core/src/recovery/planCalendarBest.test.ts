import { describe, expect, it } from 'vitest';
import type { CalendarRequest, DayHours } from './Calendar.ts';
import { planCalendar } from './planCalendar.ts';
import { possibleStarts } from './possibleStarts.ts';
import { session } from './rota.testing.ts';

const evening: DayHours = { open: [{ from: '18:00', to: '19:30' }] };
const off: DayHours = { open: [] };
/** Days of a plan that begins on Monday the 2nd of March, open on some of them. */
const openOn = (...days: readonly number[]): CalendarRequest => ({
  zone: 'UTC',
  firstDay: '2026-03-02',
  days: 7,
  rota: {
    firstDay: '2026-03-02',
    days: [2, 3, 4, 5, 6, 7, 8].map((day) => (days.includes(day) ? evening : off)),
  },
  sessions: [session('all', { lats: 48 })],
});
const on = (id: string, day: number, time = '18:00') => ({
  session: id,
  start: `2026-03-0${day}T${time}`,
});
const placed = (request: CalendarRequest) => {
  const plan = planCalendar(request);
  if (plan.kind !== 'planned') throw new Error(plan.message);
  return plan.sessions.map(({ session: id, start }) => `${id} ${start.slice(9)}`);
};

describe('of equally many sessions', () => {
  it('those of an earlier plan stay, each by its own name', () => {
    const request = openOn(2, 3, 5, 6);
    expect(placed(request)).toEqual(['all 2T18:00', 'all 5T18:00']);
    expect(placed({ ...request, keep: [on('all', 6, '18:30')] })).toEqual([
      'all 2T18:00',
      'all 6T18:30',
    ]);
    const sessions = [session('pull', { lats: 48 }), session('legs', { vasti: 96 })];
    const two = { ...request, days: 4, sessions };
    expect(placed({ ...two, keep: [on('legs', 3, '18:30')] })).toEqual([
      'pull 2T18:00',
      'legs 3T18:30',
      'pull 5T18:00',
    ]);
    expect(placed({ ...two, keep: [on('pull', 3, '18:30')] })).toEqual([
      'pull 2T18:00',
      'legs 3T18:00',
      'pull 5T18:00',
    ]);
  });

  it('the way that leaves more is not given up for one that keeps more so far', () => {
    // A on the 2nd is kept, but then B comes on the 3rd and C not before the 6th: three sessions.
    // B, A, C and A again are four, and the last of them can stay at 18:30.
    const sessions = [
      session('A', { lats: 24 }),
      session('B', { vasti: 72 }),
      session('C', { vasti: 96 }),
    ];
    const keep = [on('A', 2), on('A', 6, '18:30')];
    const request: CalendarRequest = {
      ...openOn(2, 3, 5, 6),
      sessions,
      order: 'any-in-round',
      keep,
    };
    expect(placed(request)).toEqual(['B 2T18:00', 'A 3T18:00', 'C 5T18:00', 'A 6T18:30']);
  });

  it('a way whose muscles are ready sooner is kept beside one that keeps more', () => {
    // A on the 4th is kept, but is not ready again within the week: two sessions.
    const sessions = [session('A', { lats: 96 }), session('B', { vasti: 24 })];
    const keep = [on('A', 4), on('B', 5)];
    expect(placed({ ...openOn(2, 4, 5, 6), sessions, keep })).toEqual([
      'A 2T18:00',
      'B 5T18:00',
      'A 6T18:00',
    ]);
  });

  it('the most even has the least sum of squared days beyond, not most gaps that are even', () => {
    // two a week: 3 or 4 days are even. The 1st, 6th, 8th and 10th are 5, 2 and 2 days apart:
    // 1 + 1 + 1 = 3. The 1st, 2nd, 6th and 10th are 1, 4 and 4 days apart: 4 + 0 + 0 = 4.
    const open = [1, 2, 6, 8, 10];
    const request: CalendarRequest = {
      zone: 'UTC',
      firstDay: '2026-03-01',
      days: 14,
      rota: {
        firstDay: '2026-03-01',
        days: Array.from({ length: 14 }, (_, i) => (open.includes(i + 1) ? evening : off)),
      },
      sessions: [session('all', { lats: 20 })],
      perWeek: 2,
    };
    const plan = planCalendar(request);
    expect(plan.kind === 'planned' && plan.sessions.map(({ date }) => date.slice(8))).toEqual([
      '01',
      '06',
      '08',
      '10',
    ]);
  });

  it('the best of as many ways as are compared is taken, those judged best so far', () => {
    // the 3rd and the 7th are four days apart, the 2nd and the 7th five
    const even = { ...openOn(2, 3, 7), perWeek: 2 };
    expect(placed({ ...even, mostWays: 1 })).toEqual(['all 2T18:00', 'all 7T18:00']);
    expect(placed({ ...even, mostWays: 2 })).toEqual(['all 3T18:00', 'all 7T18:00']);
    expect(placed(even)).toEqual(['all 3T18:00', 'all 7T18:00']);
    const kept = { ...openOn(2, 3, 5, 6), keep: [on('all', 3)] };
    expect(placed({ ...kept, mostWays: 1 })).toEqual(['all 3T18:00', 'all 5T18:00']);
  });
});

describe('around a session that stays', () => {
  it('the others are judged as anywhere', () => {
    // two a week are three or four days apart; the 5th is ready, too, and sooner
    const early = { from: '07:00', to: '08:00' };
    const days = [{ open: [early, ...evening.open] }];
    const request: CalendarRequest = {
      ...openOn(),
      rota: { firstDay: '2026-03-02', days },
      perWeek: 2,
      fixed: [on('all', 3)],
    };
    expect(placed(request)).toEqual(['all 3T18:00', 'all 6T07:00']);
  });

  it('an earlier plan is kept', () => {
    const sessions = [session('pull', { lats: 48 }), session('legs', { vasti: 96 })];
    const request: CalendarRequest = {
      ...openOn(2, 3),
      sessions,
      fixed: [on('legs', 2)],
      keep: [on('pull', 3, '18:30')],
    };
    expect(placed(request)).toEqual(['legs 2T18:00', 'pull 3T18:30']);
  });
});

describe('a run of days', () => {
  it('leaves room for the way that used less of it', () => {
    // full on the 2nd, ready 48 h later, then light 24 h apart: the evenings of the 4th and the 5th.
    // The mornings of the 3rd and 4th come sooner and use the run up.
    const night: DayHours = {
      kind: 'night',
      open: [
        { from: '07:00', to: '08:00' },
        { from: '18:00', to: '19:00' },
      ],
    };
    const request: CalendarRequest = {
      ...openOn(),
      days: 4,
      rota: { firstDay: '2026-03-02', days: [evening, night, night, night] },
      rules: [{ kind: 'night', light: true, mostInARow: 2 }],
      sessions: [
        { ...session('all', { lats: 48 }), light: { minutes: 60, muscles: { lats: 24 } } },
      ],
    };
    expect(placed(request)).toEqual(['all 2T18:00', 'all 4T18:00', 'all 5T18:00']);
  });
});

describe('a week', () => {
  it('leaves room for the way that used less of it', () => {
    // full on Sunday the 1st, ready 48 h later, then light: two in the week; Monday and Tuesday
    // morning would be the two of that week already
    const day: DayHours = {
      open: [
        { from: '07:00', to: '08:00' },
        { from: '18:00', to: '19:00' },
      ],
    };
    const request: CalendarRequest = {
      ...openOn(),
      firstDay: '2026-03-01',
      days: 4,
      perWeek: 2,
      rota: { firstDay: '2026-03-01', days: [evening, day, day, day] },
      lightDates: [
        { from: '2026-03-02', to: '2026-03-02' },
        { from: '2026-03-03', to: '2026-03-04' },
      ],
      sessions: [
        { ...session('all', { lats: 48 }), light: { minutes: 60, muscles: { lats: 24 } } },
      ],
    };
    expect(placed(request)).toEqual(['all 1T18:00', 'all 3T18:00', 'all 4T18:00']);
  });
});

describe('a rule for the day after', () => {
  it('holds for the next day alone', () => {
    const night = { ...evening, kind: 'night' };
    const request: CalendarRequest = {
      ...openOn(),
      days: 3,
      rota: { firstDay: '2026-03-02', days: [night] },
      rules: [{ kind: 'night', noneOnTheNextDay: true }],
      sessions: [session('all', { lats: 20 })],
    };
    expect(placed(request)).toEqual(['all 2T18:00', 'all 4T18:00']);
  });
});

describe('hours from a time to the same time', () => {
  it('are a whole day', () => {
    const rota = { firstDay: '2026-03-02', days: [{ open: [{ from: '06:00', to: '06:00' }] }] };
    const sessions = [{ ...session('all', {}), minutes: 1440 }];
    expect(placed({ ...openOn(), days: 1, rota, sessions })).toEqual(['all 2T06:00']);
  });
});

describe('a session that is placed', () => {
  it('has the kind of its day and the gym, where there is one', () => {
    const first = (part: Partial<DayHours>) => {
      const rota = { firstDay: '2026-03-02', days: [{ ...evening, ...part }] };
      const plan = planCalendar({ ...openOn(), days: 1, rota });
      return plan.kind === 'planned' && plan.sessions[0];
    };
    expect(first({ kind: 'night', gym: 'boathouse' })).toMatchObject({
      dayKind: 'night',
      gym: 'boathouse',
    });
    expect(first({})).not.toHaveProperty('dayKind');
    expect(first({})).not.toHaveProperty('gym');
  });
});

describe('nothing that fits', () => {
  it('has no conflicts', () => {
    expect(planCalendar(openOn())).toMatchObject({ kind: 'nothing-fits', conflicts: [] });
  });
});

describe('possibleStarts', () => {
  it('takes the fixed sessions in any order', () => {
    const fixed = [on('all', 8), on('all', 2)];
    const request = { ...openOn(2, 3, 4, 5, 6, 7, 8), startEveryMinutes: 90 };
    const between = ['2026-03-04T18:00', '2026-03-05T18:00', '2026-03-06T18:00'];
    expect(possibleStarts({ ...request, fixed }, 'all')).toEqual(between);
    expect(possibleStarts({ ...request, fixed: fixed.toReversed() }, 'all')).toEqual(between);
    const later = [on('all', 8), on('all', 6)];
    expect(possibleStarts({ ...request, fixed: later }, 'all')).toEqual([
      '2026-03-02T18:00',
      '2026-03-03T18:00',
      '2026-03-04T18:00',
    ]);
  });
});
