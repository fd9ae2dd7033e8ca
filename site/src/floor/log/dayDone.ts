/**
 * The day to write a session down for: the day it is done on, except where the log already has
 * later sets, as in a plan with made-up days; then the day it was planned for.
 *
 * @param planned `YYYY-MM-DD`, as all of them.
 * @param known days of the sets that are known already.
 */
export function dayDone(planned: string, known: readonly string[], today: string): string {
  return known.some((day) => day > today) ? planned : today;
}

/** The calendar day here at a moment, `YYYY-MM-DD`. */
export function dayOf(at: number): string {
  const day = new Date(at);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}
