import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { CalendarRequest, PlacedSession } from './Calendar.ts';
import { calendarEntries } from './calendarEntries.ts';
import { calendarFile } from './calendarFile.ts';
import { planCalendar } from './planCalendar.ts';

const stampedAt = '2026-03-01T09:00:00Z';
const requestFor = (zone: string, firstDay = '2026-03-02'): CalendarRequest => ({
  zone,
  firstDay,
  days: 42,
  rota: {
    firstDay,
    days: [{ open: [{ from: '18:00', to: '19:30' }], gym: 'Boathouse, north bay' }],
  },
  sessions: [{ id: 'all', name: 'Whole body', minutes: 75, muscles: { lats: 46 } }],
  perWeek: 2,
});
const planned = (request: CalendarRequest) => {
  const plan = planCalendar(request);
  if (plan.kind !== 'planned') throw new Error(plan.message);
  return plan.sessions;
};

/** Reads a file back as an independent reader does, with only the zones that the file brings. */
function read(file: string) {
  const calendar = new ICAL.Component(ICAL.parse(file) as unknown[]);
  const zones = new Map(
    calendar.getAllSubcomponents('vtimezone').map((component) => {
      const zone = new ICAL.Timezone(component);
      return [zone.tzid, zone] as const;
    }),
  );
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    const moment = (name: 'dtstart' | 'dtend') => {
      const property = component.getFirstProperty(name);
      const time = component.getFirstPropertyValue(name) as ICAL.Time;
      const zone = zones.get(String(property?.getParameter('tzid')));
      if (zone) time.zone = zone;
      return new Date(1000 * time.toUnixTime()).toISOString().replace('.000', '');
    };
    return {
      uid: event.uid,
      sequence: event.sequence,
      status: component.getFirstPropertyValue('status'),
      summary: event.summary,
      description: event.description,
      location: event.location,
      startsAt: moment('dtstart'),
      endsAt: moment('dtend'),
    };
  });
}

describe('calendarFile', () => {
  for (const zone of [
    'Europe/Berlin',
    'America/St_Johns',
    'America/Santiago',
    'Australia/Lord_Howe',
    'Asia/Kathmandu',
    'Pacific/Auckland',
    'UTC',
  ]) {
    for (const firstDay of ['2026-03-02', '2026-10-05']) {
      it(`is read back with the same moments: ${zone} from ${firstDay}`, () => {
        const sessions = planned(requestFor(zone, firstDay));
        const entries = calendarEntries({ planId: 'p', sessions });
        const events = read(calendarFile({ entries, zone, stampedAt }));
        expect(events.map(({ startsAt, endsAt }) => ({ startsAt, endsAt }))).toEqual(
          sessions.map(({ startsAt, endsAt }) => ({ startsAt, endsAt })),
        );
      });
    }
  }

  it('folds lines at 75 octets, inside no character, and escapes text', () => {
    const text =
      'Rudern; Klimmzüge, dann „Beinstrecken“ bis zum Ende – 3 × 8\nBack\\slash 🏋️ '.repeat(3);
    const sessions = planned(requestFor('Europe/Berlin'));
    const file = calendarFile({
      entries: calendarEntries({ planId: 'p', sessions }),
      zone: 'Europe/Berlin',
      stampedAt,
      name: 'Crew; training',
      describe: () => text,
    });
    const lines = file.split('\r\n');
    expect(lines.at(-1)).toBe('');
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const [event] = read(file);
    expect(event?.description).toBe(text);
    expect(event?.location).toBe('Boathouse, north bay');
  });

  it('writes a start in the second of two equal hours in world time', () => {
    const [first] = planned(requestFor('Europe/Berlin')) as [PlacedSession];
    const twice = {
      ...first,
      start: '2026-10-25T02:30',
      end: '2026-10-25T03:30',
      startsAt: '2026-10-25T01:30:00Z',
      endsAt: '2026-10-25T02:30:00Z',
    };
    const entries = calendarEntries({ planId: 'p', sessions: [twice] });
    const [event] = read(calendarFile({ entries, zone: 'Europe/Berlin', stampedAt }));
    expect(event?.startsAt).toBe(twice.startsAt);
  });
});

describe('calendarEntries', () => {
  const request = requestFor('Europe/Berlin');
  const sessions = planned(request);
  const entries = calendarEntries({ planId: 'p', sessions });
  /** What a calendar application holds after several imports: the highest count of each name. */
  const imported = (...files: readonly string[]) => {
    const held = new Map<string, ReturnType<typeof read>[number]>();
    for (const event of files.flatMap(read)) {
      const known = held.get(event.uid);
      if (known === undefined || event.sequence > known.sequence) held.set(event.uid, event);
    }
    return [...held.values()].filter(({ status }) => status !== 'CANCELLED');
  };
  const file = (list: typeof entries) =>
    calendarFile({ entries: list, zone: request.zone, stampedAt });

  it('changes nothing when nothing changed', () => {
    expect(calendarEntries({ planId: 'p', sessions, previous: entries })).toEqual(entries);
  });

  it('updates a calendar on the second import instead of doubling it', () => {
    const moved = planned({
      ...request,
      otherHours: [{ from: '2026-03-05', to: '2026-03-05', hours: { open: [] } }],
      keep: sessions,
    });
    const next = calendarEntries({ planId: 'p', sessions: moved, previous: entries });
    const held = imported(file(entries), file(next));
    expect(held.map(({ startsAt }) => startsAt).sort()).toEqual(
      moved.map(({ startsAt }) => startsAt).sort(),
    );
    expect(next.filter(({ sequence }) => sequence > 0)).toHaveLength(1);
  });

  it('takes a session out that is gone, and leaves those that are past', () => {
    const later = sessions.filter(({ date }) => date >= '2026-03-16').slice(1);
    const next = calendarEntries({
      planId: 'p',
      sessions: later,
      previous: entries,
      from: '2026-03-16',
    });
    const held = imported(file(entries), file(next));
    const past = sessions.filter(({ date }) => date < '2026-03-16');
    expect(held.map(({ startsAt }) => startsAt).sort()).toEqual(
      [...past, ...later].map(({ startsAt }) => startsAt).sort(),
    );
  });

  it('counts on when a session comes back', () => {
    const without = calendarEntries({
      planId: 'p',
      sessions: sessions.slice(1),
      previous: entries,
      from: '2026-03-02',
    });
    const again = calendarEntries({ planId: 'p', sessions, previous: without });
    expect(again[0]).toMatchObject({ sequence: 2, status: 'confirmed' });
  });
});
