import { bad, good, type Outcome } from '../../basis/index.ts';
import { dateOfDay } from '../../recovery/index.ts';

/** In which order a date was written. */
export type DateOrder = 'day-first' | 'month-first' | 'year-first';

/** How {@link readDate} reads what is not written year-month-day. */
export interface DateReading {
  /** Needed for dates that are not written year-month-day with hyphens. */
  readonly dateOrder?: DateOrder;
  /** What two-digit years count from: 2000 makes 26 the year 2026. Without it they are a problem. */
  readonly shortYearsFrom?: number;
}

/**
 * A calendar date from a cell: `2026-03-02`, also with a time behind it, or three numbers in the
 * order that was asked for, with points, strokes or hyphens. The order is never guessed.
 */
export function readDate(
  cell: string,
  { dateOrder, shortYearsFrom }: DateReading,
): Outcome<string> {
  const iso = /^(\d{4})-(\d{2})-(\d{2})(?:[T ]\d{2}:\d{2}.*)?$/.exec(cell);
  if (iso) return checked(cell, Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const parts = /^(\d{1,4})[./\- ]+(\d{1,2})[./\- ]+(\d{1,4})\.?$/.exec(cell);
  if (parts === null) {
    return problem('not-a-date', 'Write a date, for example 2026-03-02.', cell);
  }
  if (dateOrder === undefined) {
    return problem('date-order', 'Say which comes first in these dates: day, month or year.', cell);
  }
  const [first, second, third] = parts.slice(1) as [string, string, string];
  const [day, month, year] = (
    dateOrder === 'day-first'
      ? [first, second, third]
      : dateOrder === 'month-first'
        ? [second, first, third]
        : [third, second, first]
  ) as [string, string, string];
  if (year.length === 4) return checked(cell, Number(year), Number(month), Number(day));
  if (year.length !== 2 || shortYearsFrom === undefined) {
    return problem('short-year', 'Write the year with four digits, for example 2026.', cell);
  }
  const century = shortYearsFrom - (shortYearsFrom % 100);
  const near = century + Number(year);
  return checked(cell, near < shortYearsFrom ? near + 100 : near, Number(month), Number(day));
}

function checked(cell: string, year: number, month: number, day: number): Outcome<string> {
  const date = dateOfDay(Date.UTC(year, month - 1, day) / 86_400_000);
  const [sameYear, sameMonth, sameDay] = date.split('-').map(Number);
  return sameYear === year && sameMonth === month && sameDay === day
    ? good(date)
    : problem('no-such-date', 'There is no such date: check day and month, and their order.', cell);
}

function problem(name: string, message: string, received: string) {
  return bad({ code: `progress.${name}`, path: ['date'], message, received });
}
