import { describe, expect, it } from 'vitest';
import type { PlacedSession } from './Calendar.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { calendarFile } from './calendarFile.ts';

const stampedAt = '2026-03-01T09:00:00Z';
const session: PlacedSession = {
  number: 1,
  session: 'pull',
  name: 'Pull',
  start: '2026-03-02T18:00',
  end: '2026-03-02T19:15',
  startsAt: '2026-03-02T17:00:00Z',
  endsAt: '2026-03-02T18:15:00Z',
  date: '2026-03-02',
  light: false,
  gym: 'Boathouse',
  gaps: [],
};
const entry = (part: Partial<PlacedSession>, rest: Partial<CalendarEntry> = {}): CalendarEntry => ({
  uid: 'p-1@windlass',
  sequence: 0,
  status: 'confirmed',
  session: { ...session, ...part },
  ...rest,
});
const { gym: _, ...anywhere } = session;
const later: PlacedSession = {
  ...anywhere,
  number: 2,
  light: true,
  start: '2026-03-30T18:00',
  end: '2026-03-30T19:00',
  startsAt: '2026-03-30T16:00:00Z',
  endsAt: '2026-03-30T17:00:00Z',
};

describe('calendarFile', () => {
  it('is this text, line for line', () => {
    const file = calendarFile({
      entries: [
        { uid: 'p-2@windlass', sequence: 3, status: 'cancelled', session: later },
        entry({}),
      ],
      zone: 'Europe/Berlin',
      stampedAt,
      name: 'Crew, spring',
      describe: ({ number }) => (number === 1 ? 'Row; then curl' : ''),
    });
    expect(file.split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'VERSION:2.0',
      'PRODID:-//Windlass//Training calendar//EN',
      'METHOD:PUBLISH',
      'NAME:Crew\\, spring',
      'BEGIN:VTIMEZONE',
      'TZID:Europe/Berlin',
      'BEGIN:STANDARD',
      'DTSTART:20251026T030000',
      'TZOFFSETFROM:+0200',
      'TZOFFSETTO:+0100',
      'END:STANDARD',
      'BEGIN:DAYLIGHT',
      'DTSTART:20260329T020000',
      'TZOFFSETFROM:+0100',
      'TZOFFSETTO:+0200',
      'END:DAYLIGHT',
      'END:VTIMEZONE',
      'BEGIN:VEVENT',
      'UID:p-1@windlass',
      'DTSTAMP:20260301T090000Z',
      'SEQUENCE:0',
      'DTSTART;TZID=Europe/Berlin:20260302T180000',
      'DTEND;TZID=Europe/Berlin:20260302T191500',
      'SUMMARY:Pull',
      'DESCRIPTION:Row\\; then curl',
      'LOCATION:Boathouse',
      'STATUS:CONFIRMED',
      'END:VEVENT',
      'BEGIN:VEVENT',
      'UID:p-2@windlass',
      'DTSTAMP:20260301T090000Z',
      'SEQUENCE:3',
      'DTSTART;TZID=Europe/Berlin:20260330T180000',
      'DTEND;TZID=Europe/Berlin:20260330T190000',
      'SUMMARY:Pull (light)',
      'STATUS:CANCELLED',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  it('has the zone as it is when the file is made, without entries', () => {
    const file = calendarFile({ entries: [], zone: 'Europe/Berlin', stampedAt });
    expect(file).toContain('DTSTART:20251026T030000');
    expect(file).not.toContain('DAYLIGHT');
    expect(file).not.toMatch(/NAME:|VEVENT/);
  });

  it('covers the whole stretch of sessions whose numbers are not in time order', () => {
    // the second number comes first: in winter time, before the first in summer time
    const file = calendarFile({
      entries: [entry({ ...later, number: 1 }), entry({ number: 2 })],
      zone: 'Europe/Berlin',
      stampedAt,
    });
    expect(file).toContain('DTSTART:20251026T030000');
    expect(file).toContain('DTSTART:20260329T020000');
    expect(file).not.toContain('DESCRIPTION');
  });

  it('writes both moments in world time when one lies in an hour that comes twice, the second time', () => {
    // Berlin goes back at 01:00Z from 3:00 to 2:00: 01:45 is 23:45Z, the second 2:30 is 01:30Z
    const file = calendarFile({
      entries: [
        entry({
          start: '2026-10-25T01:45',
          startsAt: '2026-10-24T23:45:00Z',
          end: '2026-10-25T02:30',
          endsAt: '2026-10-25T01:30:00Z',
        }),
      ],
      zone: 'Europe/Berlin',
      stampedAt,
    });
    expect(file).toContain('DTSTART:20261024T234500Z\r\nDTEND:20261025T013000Z\r\n');
  });
});
