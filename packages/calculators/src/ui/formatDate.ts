import { words } from '../words.ts';

/** Monday is 0. */
function weekdayOf(date: string): number {
  return (new Date(`${date}T00:00:00Z`).getUTCDay() + 6) % 7;
}

function partsOf(date: string) {
  const [, month = 1, day = 1] = date.split('-').map(Number);
  const { weekdays, months } = words.dates;
  return { weekday: weekdays[weekdayOf(date)] ?? '', day, month: months[month - 1] ?? '' };
}

/** `Thu 5 Mar` of a date `2026-03-05`. */
export function formatDate(date: string): string {
  const { weekday, day, month } = partsOf(date);
  return words.dates.day(weekday, day, month);
}

/** `Thu 5`, where the month goes without saying. */
export function formatDay(date: string): string {
  const { weekday, day } = partsOf(date);
  return words.dates.short(weekday, day);
}

/** `5 Mar`, for an axis of days. */
export function formatDayMonth(date: string): string {
  const { day, month } = partsOf(date);
  return words.dates.dayMonth(day, month);
}

/** `Thu 5 Mar, 18:00` of a wall time `2026-03-05T18:00`. */
export function formatWall(wall: string): string {
  return words.dates.at(formatDate(wall.slice(0, 10)), wall.slice(11, 16));
}
