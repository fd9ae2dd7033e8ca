import { Temporal } from 'temporal-polyfill';

/**
 * Minutes since 1970 of a wall time in a zone. A wall time that a clock change skips is moved on by
 * the length of the gap; of one that comes twice the first is taken.
 */
export function minutesOf(wall: string, zone: string): number {
  const zoned = Temporal.PlainDateTime.from(wall).toZonedDateTime(zone);
  return zoned.epochMilliseconds / 60_000;
}

/** The wall time of a moment in a zone: `2026-03-30T18:00`. */
export function wallOf(minutes: number, zone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(minutes * 60_000)
    .toZonedDateTimeISO(zone)
    .toPlainDateTime()
    .toString({ smallestUnit: 'minute' });
}

/** The moment in world time: `2026-03-30T16:00:00Z`. */
export function instantOf(minutes: number): string {
  return Temporal.Instant.fromEpochMilliseconds(minutes * 60_000).toString();
}

/** Minutes since 1970 of a moment in world time. */
export function minutesOfInstant(instant: string): number {
  return Temporal.Instant.from(instant).epochMilliseconds / 60_000;
}
