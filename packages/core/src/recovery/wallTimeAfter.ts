import { requireNumber } from '../basis/index.ts';
import { minutesOf, wallOf } from './zonedTime.ts';

/**
 * The wall time a number of elapsed hours after another. Two days later is another question: the
 * same wall time two dates on.
 *
 * @param hours elapsed hours, to the minute; negative for before.
 * @throws RangeError for a time or a zone that does not exist, or hours that are not finite.
 * @example
 * ```ts
 * import { wallTimeAfter } from '@windlass/core/recovery';
 * wallTimeAfter('2026-03-28T10:00', 48, 'Europe/Berlin'); // '2026-03-30T11:00'
 * ```
 */
export function wallTimeAfter(from: string, hours: number, zone: string): string {
  requireNumber('wallTimeAfter', 'hours', hours);
  return wallOf(minutesOf(from, zone) + Math.round(60 * hours), zone);
}
