import { offsetMinutes } from '../offsetMinutes.ts';
import { instantOf, minutesOfInstant } from '../zonedTime.ts';
import { contentLine } from './contentLine.ts';

/**
 * A VTIMEZONE of RFC 5545 (3.6.5): the offset in force at the first moment and every change of the
 * clock up to the last, each written out with its date. Moments are in world time. Where the clock
 * was not changed in the year before the first moment, its offset is written from 1970 on.
 */
export function timeZoneBlock(zone: string, first: string, last: string): string {
  const [start, end] = [minutesOfInstant(first), minutesOfInstant(last)];
  const changes = changesBetween(start - YEAR, end, zone);
  const before = changes.findLast((change) => change <= start);
  const kept = changes.filter((change) => change >= (before ?? start));
  const offset = offsetMinutes(start, zone);
  const observances = before === undefined ? [observance('19700101T000000', offset, offset)] : [];
  for (const change of kept) {
    const [from, to] = [offsetMinutes(change - 1, zone), offsetMinutes(change, zone)];
    // the onset is written in the time that was in force until then
    observances.push(observance(basic(instantOf(change + from)), from, to));
  }
  return [
    contentLine('BEGIN', 'VTIMEZONE'),
    contentLine('TZID', zone),
    ...observances,
    contentLine('END', 'VTIMEZONE'),
  ].join('');
}

const WEEK = 7 * 1440;
const YEAR = 53 * WEEK;

/** The moments of clock changes: no zone has two of them within a week. */
function changesBetween(from: number, to: number, zone: string): readonly number[] {
  const changes: number[] = [];
  for (let at = Math.floor(from); at < to; at += WEEK) {
    const offset = offsetMinutes(at, zone);
    if (offsetMinutes(at + WEEK, zone) === offset) continue;
    let [same, changed] = [at, at + WEEK];
    while (changed - same > 1) {
      const middle = Math.floor((same + changed) / 2);
      if (offsetMinutes(middle, zone) === offset) same = middle;
      else changed = middle;
    }
    if (changed <= to) changes.push(changed);
  }
  return changes;
}

function observance(onset: string, from: number, to: number): string {
  const kind = to > from ? 'DAYLIGHT' : 'STANDARD';
  return [
    contentLine('BEGIN', kind),
    contentLine('DTSTART', onset),
    contentLine('TZOFFSETFROM', offsetText(from)),
    contentLine('TZOFFSETTO', offsetText(to)),
    contentLine('END', kind),
  ].join('');
}

/** `+0545`. */
function offsetText(minutes: number): string {
  const whole = Math.abs(Math.round(minutes));
  const two = (part: number) => String(part).padStart(2, '0');
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(whole / 60))}${two(whole % 60)}`;
}

/** The form of RFC 5545 without marks: `20260329T020000`. */
export function basic(time: string): string {
  const digits = time.replace(/\D/g, '');
  return `${digits.slice(0, 8)}T${digits.slice(8, 14).padEnd(6, '0')}`;
}
