import { dayNumber } from './dayNumber.ts';
import { minutesOf } from './zonedTime.ts';

/** The time between two wall times of one zone. */
export interface ElapsedTime {
  /** Hours that really pass; a clock change in between counts as it is. */
  readonly hours: number;
  /** Dates turned over, which is something else. */
  readonly calendarDays: number;
}

/**
 * How much time passes between two wall times. Two days over a clock change are 47 or 49 hours.
 *
 * @param from wall time `YYYY-MM-DDTHH:MM`. One that a clock change skips counts as that much later,
 * one that comes twice as the first.
 * @param zone name from the time-zone database, `Europe/Berlin`.
 * @returns negative when `to` comes before `from`.
 * @throws RangeError for a time or a zone that does not exist.
 * @example
 * ```ts
 * import { elapsedTime } from '@windlass/core/recovery';
 * elapsedTime('2026-03-28T10:00', '2026-03-30T10:00', 'Europe/Berlin'); // { hours: 47, calendarDays: 2 }
 * elapsedTime('2026-05-05T23:30', '2026-05-06T00:40', 'Europe/Berlin').hours * 60; // 70
 * ```
 */
export function elapsedTime(from: string, to: string, zone: string): ElapsedTime {
  return {
    hours: (minutesOf(to, zone) - minutesOf(from, zone)) / 60,
    calendarDays: dayNumber(to.slice(0, 10)) - dayNumber(from.slice(0, 10)),
  };
}
