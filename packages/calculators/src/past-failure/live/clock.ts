/** Seconds on a clock that only runs forward while a page is open, and goes on after a reload. */
export function secondsNow(): number {
  return (performance.timeOrigin + performance.now()) / 1000;
}

/** The calendar date here and now, `YYYY-MM-DD`. */
export function dateToday(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** A calendar date as a number of days, for records of performed sets. */
export function dayOf(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / 86_400_000;
}
