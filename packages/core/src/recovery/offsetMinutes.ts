/**
 * How far the clocks of a zone are ahead of world time at a moment, in minutes: 120 for Berlin in
 * summer. From the time-zone database that the platform carries.
 *
 * @param moment minutes since 1970.
 * @throws RangeError for a zone that does not exist.
 */
export function offsetMinutes(moment: number, zone: string): number {
  const text = clockOf(zone).format(moment * 60_000);
  const [month, day, year, hour, minute, second] = text.split(/\D+/).map(Number) as Parts;
  const local = Date.UTC(year, month - 1, day, hour, minute, second) / 60_000;
  return Math.round(60 * (local - moment)) / 60;
}

type Parts = [number, number, number, number, number, number];

/** Making a clock takes far longer than reading it. */
const clocks = new Map<string, Intl.DateTimeFormat>();

function clockOf(zone: string): Intl.DateTimeFormat {
  const known = clocks.get(zone);
  if (known) return known;
  const clock = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  clocks.set(zone, clock);
  return clock;
}
