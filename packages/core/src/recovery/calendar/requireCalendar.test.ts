import { describe, expect, it } from 'vitest';
import type { CalendarRequest, RotaSession } from '../Calendar.ts';
import { requireCalendar } from './requireCalendar.ts';

const session: RotaSession = { id: 'a', name: 'A', minutes: 60, muscles: { lats: 48 } };
const rotation = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ ...session, id: `${i}` }));
const rota = (count: number) => ({
  firstDay: '2026-03-02',
  days: Array.from({ length: count }, () => ({ open: [] })),
});
const check = (part: Partial<CalendarRequest>) => () =>
  requireCalendar('plan', {
    zone: 'UTC',
    firstDay: '2026-03-02',
    days: 7,
    rota: rota(7),
    sessions: [session],
    ...part,
  });
const only = (part: Partial<RotaSession>) => check({ sessions: [{ ...session, ...part }] });
const light = (minutes: number, hours = 24) =>
  only({ light: { minutes, muscles: { lats: hours } } });
const rule = (mostInARow: number) => check({ rules: [{ kind: 'night', mostInARow }] });

describe('requireCalendar', () => {
  it('takes every number at the limits of its range', () => {
    for (const request of [
      ...[1, 366].flatMap((count) => [check({ days: count }), check({ rota: rota(count) })]),
      ...[1, 8].map((count) => check({ sessions: rotation(count) })),
      ...[1, 7].map((perWeek) => check({ perWeek })),
      ...[1, 1440].flatMap((minutes) => [
        check({ startEveryMinutes: minutes }),
        only({ minutes }),
        light(minutes),
      ]),
      check({ mostWays: 1 }),
      rule(0),
      check({ rules: [{ kind: 'night' }] }),
      only({ muscles: { lats: 0 } }),
      light(30, 0),
    ]) {
      expect(request).not.toThrow();
    }
  });

  it('refuses every number just beyond, by its name', () => {
    for (const [name, request] of [
      ...[0, 367].flatMap((count) => [
        ['days', check({ days: count })] as const,
        ['rota.days.length', check({ rota: rota(count) })] as const,
      ]),
      ...[0, 9].map((count) => ['sessions.length', check({ sessions: rotation(count) })] as const),
      ...[0, 8].map((perWeek) => ['perWeek', check({ perWeek })] as const),
      ...[0, 1441].flatMap((minutes) => [
        ['startEveryMinutes', check({ startEveryMinutes: minutes })] as const,
        ['minutes', only({ minutes })] as const,
        ['minutes', light(minutes)] as const,
      ]),
      ['mostWays', check({ mostWays: 0 })] as const,
      ['mostInARow', rule(-1)] as const,
      ['hours', only({ muscles: { lats: -1 } })] as const,
      ['hours', light(30, -1)] as const,
    ]) {
      expect(request).toThrow(`plan: ${name} must be`);
    }
  });

  it('refuses dates that do not exist and ids that are doubled', () => {
    expect(check({ firstDay: '2026-02-30' })).toThrow(RangeError);
    expect(check({ rota: { ...rota(1), firstDay: '2026-02-30' } })).toThrow(RangeError);
    expect(check({ sessions: [session, session] })).toThrow(RangeError);
  });

  it('refuses a session that is not in the rotation, wherever it is named', () => {
    for (const part of ['done', 'fixed', 'keep'] as const) {
      const named = (id: string) => check({ [part]: [{ session: id, start: '2026-03-02T18:00' }] });
      expect(named('a')).not.toThrow();
      expect(named('b')).toThrow(`${part} names the session b`);
    }
  });
});
