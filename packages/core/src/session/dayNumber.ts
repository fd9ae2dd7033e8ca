const MILLISECONDS_PER_DAY = 86_400_000;

/** Days from 1970-01-01 to a calendar day `YYYY-MM-DD`. */
export function dayNumber(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / MILLISECONDS_PER_DAY;
}
