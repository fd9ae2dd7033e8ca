import { Temporal } from 'temporal-polyfill';
import { contentLine } from './contentLine.ts';

/**
 * A VTIMEZONE of RFC 5545 (3.6.5): the offset in force at the first moment and every change of the
 * clock up to the last, each written out with its date. Moments are in world time.
 */
export function timeZoneBlock(zone: string, first: string, last: string): string {
  const start = Temporal.Instant.from(first).toZonedDateTimeISO(zone);
  const end = Temporal.Instant.from(last).epochMilliseconds;
  const before = start.getTimeZoneTransition('previous');
  const observances = before ? [] : [observance('19700101T000000', start.offset, start.offset)];
  let change = before ?? start.getTimeZoneTransition('next');
  while (change !== null && change.epochMilliseconds <= end) {
    const { offset, offsetNanoseconds } = change.subtract({ milliseconds: 1 });
    // the onset is written in the time that was in force until then
    const onset = change.toInstant().add({ nanoseconds: offsetNanoseconds }).toString();
    observances.push(observance(basic(onset), offset, change.offset));
    change = change.getTimeZoneTransition('next');
  }
  return [
    contentLine('BEGIN', 'VTIMEZONE'),
    contentLine('TZID', zone),
    ...observances,
    contentLine('END', 'VTIMEZONE'),
  ].join('');
}

function observance(onset: string, from: string, to: string): string {
  const kind = minutes(to) > minutes(from) ? 'DAYLIGHT' : 'STANDARD';
  return [
    contentLine('BEGIN', kind),
    contentLine('DTSTART', onset),
    contentLine('TZOFFSETFROM', from.replaceAll(':', '')),
    contentLine('TZOFFSETTO', to.replaceAll(':', '')),
    contentLine('END', kind),
  ].join('');
}

/** Minutes of an offset `+05:45`. */
function minutes(offset: string): number {
  const [hours, rest] = offset.slice(1).split(':').map(Number) as [number, number];
  return (offset.startsWith('-') ? -1 : 1) * (60 * hours + rest);
}

/** The form of RFC 5545 without marks: `20260329T020000`. */
export function basic(time: string): string {
  const digits = time.replace(/\D/g, '');
  return `${digits.slice(0, 8)}T${digits.slice(8, 14).padEnd(6, '0')}`;
}
