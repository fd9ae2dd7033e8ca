import { dayNumber } from './dayNumber.ts';
import { offsetMinutes } from './offsetMinutes.ts';

const MINUTES_PER_DAY = 1440;

/**
 * Minutes since 1970 of a wall time in a zone. A wall time that a clock change skips is moved on by
 * the length of the gap; of one that comes twice the first is taken.
 *
 * @throws RangeError for a time or a zone that does not exist.
 */
export function minutesOf(wall: string, zone: string): number {
  const local = localMinutes(wall);
  const before = offsetMinutes(local - MINUTES_PER_DAY, zone);
  const after = offsetMinutes(local + MINUTES_PER_DAY, zone);
  if (before === after) return local - before;
  const moments = [local - before, local - after].filter(
    (moment) => moment + offsetMinutes(moment, zone) === local,
  );
  return moments.length === 0 ? local - before : Math.min(...moments);
}

function localMinutes(wall: string): number {
  const parts = /^([\d-]+)T([01]\d|2[0-3]):([0-5]\d)$/.exec(wall);
  if (parts === null) throw new RangeError(`wall time must be YYYY-MM-DDTHH:MM, got ${wall}`);
  const [, date, hour, minute] = parts;
  return MINUTES_PER_DAY * dayNumber(date as string) + 60 * Number(hour) + Number(minute);
}

/** The wall time of a moment in a zone: `2026-03-30T18:00`. */
export function wallOf(minutes: number, zone: string): string {
  return isoOf(minutes + offsetMinutes(minutes, zone)).slice(0, 16);
}

/** The moment in world time: `2026-03-30T16:00:00Z`. */
export function instantOf(minutes: number): string {
  return `${isoOf(minutes).slice(0, 19)}Z`;
}

/** Minutes since 1970 of a moment in world time. @throws RangeError for a text that is none. */
export function minutesOfInstant(instant: string): number {
  const minutes = /(Z|[+-]\d\d:\d\d)$/.test(instant) ? Date.parse(instant) / 60_000 : Number.NaN;
  if (Number.isNaN(minutes)) {
    throw new RangeError(`moment must be like 2026-03-30T16:00:00Z, got ${instant}`);
  }
  return minutes;
}

function isoOf(minutes: number): string {
  return new Date(minutes * 60_000).toISOString();
}
