const MS_PER_DAY = 86_400_000;

/**
 * The number of a calendar date, counted in days from 1970-01-01; a date has no hours and no zone.
 *
 * @param date `YYYY-MM-DD`.
 * @throws RangeError for anything that is not such a date, 2026-02-30 among them.
 * @example
 * ```ts
 * import { dayNumber } from '@windlass/core/recovery';
 * dayNumber('2026-03-30') - dayNumber('2026-03-28'); // 2
 * ```
 */
export function dayNumber(date: string): number {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? [];
  const number = Date.UTC(Number(year), Number(month) - 1, Number(day)) / MS_PER_DAY;
  if (!Number.isFinite(number) || dateOfDay(number) !== date) {
    throw new RangeError(`dayNumber: date must be a calendar date YYYY-MM-DD, got ${date}`);
  }
  return number;
}

/** The date of a day number. */
export function dateOfDay(day: number): string {
  return new Date(day * MS_PER_DAY).toISOString().slice(0, 10);
}
