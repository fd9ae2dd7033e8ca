import type { PlacedSession } from './Calendar.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { contentLine, escapedText } from './calendar/contentLine.ts';
import { basic, timeZoneBlock } from './calendar/timeZoneBlock.ts';
import { minutesOf, minutesOfInstant } from './zonedTime.ts';

/** What a calendar file is made of. */
export interface CalendarFileOptions {
  readonly entries: readonly CalendarEntry[];
  /** The zone that the plan was made for. */
  readonly zone: string;
  /** When the file is made: `2026-03-01T09:00:00Z`. */
  readonly stampedAt: string;
  /** Name of the whole calendar. */
  readonly name?: string;
  /** What to do in a session, as plain text. */
  readonly describe?: (session: PlacedSession) => string;
}

/**
 * A calendar file (iCalendar, RFC 5545) that any calendar application can import, and import again:
 * the names of the entries are stable and their changes counted, so that a second file updates the
 * first instead of doubling it.
 *
 * Starts are wall time with the zone's own clock changes written into the file; only a start in an
 * hour that comes twice, the second time, is written in world time. Lines are folded at 75 octets.
 *
 * @returns text to be saved as `.ics` in UTF-8, with the line ends that the format asks for.
 * @throws RangeError for an unknown zone or a moment that is none.
 * @example
 * ```ts
 * import { calendarFile } from '@windlass/core/recovery';
 * const file = calendarFile({ entries: [], zone: 'Europe/Oslo', stampedAt: '2026-03-01T09:00:00Z' });
 * file.split('\r\n')[0]; // 'BEGIN:VCALENDAR'
 * ```
 */
export function calendarFile(options: CalendarFileOptions): string {
  const { entries, zone, stampedAt, name } = options;
  const sorted = entries.toSorted((a, b) => a.session.number - b.session.number);
  const moments = sorted
    .flatMap(({ session }) => [session.startsAt, session.endsAt])
    .sort((a, b) => minutesOfInstant(a) - minutesOfInstant(b));
  return [
    contentLine('BEGIN', 'VCALENDAR'),
    contentLine('VERSION', '2.0'),
    contentLine('PRODID', '-//Windlass//Training calendar//EN'),
    contentLine('METHOD', 'PUBLISH'),
    ...(name === undefined ? [] : [contentLine('NAME', escapedText(name))]),
    timeZoneBlock(zone, moments[0] ?? stampedAt, moments.at(-1) ?? stampedAt),
    ...sorted.map((entry) => event(entry, options)),
    contentLine('END', 'VCALENDAR'),
  ].join('');
}

function event(entry: CalendarEntry, { zone, stampedAt, describe }: CalendarFileOptions): string {
  const { uid, sequence, status, session } = entry;
  const text = describe?.(session) ?? '';
  const { gym } = session;
  return [
    contentLine('BEGIN', 'VEVENT'),
    contentLine('UID', escapedText(uid)),
    contentLine('DTSTAMP', worldTime(stampedAt)),
    contentLine('SEQUENCE', String(sequence)),
    ...times(session, zone),
    contentLine('SUMMARY', escapedText(session.light ? `${session.name} (light)` : session.name)),
    ...(text === '' ? [] : [contentLine('DESCRIPTION', escapedText(text))]),
    ...(gym === undefined ? [] : [contentLine('LOCATION', escapedText(gym))]),
    contentLine('STATUS', status.toUpperCase()),
    contentLine('END', 'VEVENT'),
  ].join('');
}

function times({ start, end, startsAt, endsAt }: PlacedSession, zone: string): readonly string[] {
  const isPlain = (wall: string, instant: string) =>
    minutesOf(wall, zone) === minutesOfInstant(instant);
  return isPlain(start, startsAt) && isPlain(end, endsAt)
    ? [
        contentLine(`DTSTART;TZID=${zone}`, basic(start)),
        contentLine(`DTEND;TZID=${zone}`, basic(end)),
      ]
    : [contentLine('DTSTART', worldTime(startsAt)), contentLine('DTEND', worldTime(endsAt))];
}

function worldTime(instant: string): string {
  return `${basic(new Date(minutesOfInstant(instant) * 60_000).toISOString())}Z`;
}
