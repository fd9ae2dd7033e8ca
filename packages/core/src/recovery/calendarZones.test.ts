import { describe, expect, it } from 'vitest';
import type { CalendarRequest } from './Calendar.ts';
import { planCalendar } from './planCalendar.ts';

/** Ten zones: north and south, half and quarter hours, a change of 30 minutes, and none at all. */
const zones = [
  'Europe/Berlin',
  'Europe/London',
  'America/New_York',
  'America/St_Johns',
  'America/Santiago',
  'Africa/Casablanca',
  'Asia/Kathmandu',
  'Asia/Tokyo',
  'Australia/Lord_Howe',
  'Pacific/Auckland',
];
/** Stretches that hold the clock changes of spring and autumn in both halves of the world. */
const stretches = ['2026-03-02', '2026-03-23', '2026-10-05', '2026-10-19'];

const request = (zone: string, firstDay: string, from: string, to: string): CalendarRequest => ({
  zone,
  firstDay,
  days: 28,
  rota: { firstDay, days: [{ open: [{ from, to }] }] },
  sessions: [
    { id: 'pull', name: 'Pull', minutes: 60, muscles: { lats: 46 } },
    { id: 'legs', name: 'Legs', minutes: 60, muscles: { vasti: 70 } },
  ],
  perWeek: 3,
});

describe('calendars in ten time zones over both clock changes', () => {
  for (const zone of zones) {
    for (const firstDay of stretches) {
      it(`${zone} from ${firstDay}: none lost, none doubled, elapsed hours elapsed`, () => {
        const evening = planCalendar(request(zone, firstDay, '18:00', '19:00'));
        const utc = planCalendar(request('UTC', firstDay, '18:00', '19:00'));
        if (evening.kind !== 'planned' || utc.kind !== 'planned') throw new Error('nothing placed');
        expect(evening.sessions.map(({ start }) => start)).toEqual(
          utc.sessions.map(({ start }) => start),
        );
        for (const { start, startsAt, gaps } of evening.sessions) {
          expect(localTime(startsAt, zone)).toBe(start);
          for (const { hours, lastTrained } of gaps) {
            const last = evening.sessions.find((session) => session.start === lastTrained);
            const elapsed = (Date.parse(startsAt) - Date.parse(last?.startsAt ?? '')) / 36e5;
            expect(hours).toBe(elapsed);
          }
        }
      });
    }
  }

  it('neither loses nor doubles starts in the very hours that change', () => {
    for (const firstDay of ['2026-03-29', '2026-10-25']) {
      const night = { ...request('Europe/Berlin', firstDay, '01:00', '04:00'), days: 1 };
      const sessions = [{ id: 'a', name: 'A', minutes: 60, muscles: {} }];
      const plan = planCalendar({ ...night, sessions });
      if (plan.kind !== 'planned') throw new Error(plan.message);
      const [{ startsAt, endsAt }] = plan.sessions;
      expect(Date.parse(endsAt) - Date.parse(startsAt)).toBe(36e5);
    }
  });

  it('leaves no room for two hours in the night that has only two', () => {
    const night = { ...request('Europe/Berlin', '2026-03-29', '01:00', '04:00'), days: 1 };
    const fit = (minutes: number) =>
      planCalendar({ ...night, sessions: [{ id: 'a', name: 'A', minutes, muscles: {} }] }).kind;
    expect(fit(120)).toBe('planned');
    expect(fit(121)).toBe('nothing-fits');
  });
});

/** Wall time by the platform's own formatter. */
function localTime(instant: string, zone: string): string {
  return new Intl.DateTimeFormat('sv-SE', {
    timeZone: zone,
    dateStyle: 'short',
    timeStyle: 'short',
  })
    .format(new Date(instant))
    .replace(' ', 'T');
}
