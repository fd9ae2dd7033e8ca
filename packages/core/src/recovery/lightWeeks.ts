import { requireNumber } from '../basis/index.ts';
import type { DateRange } from './Calendar.ts';
import { dateOfDay, dayNumber } from './dayNumber.ts';

/**
 * Every n-th week of a stretch as dates on which sessions are light: `lightDates` of a calendar.
 *
 * @param firstDay first date of week 1.
 * @param weeks 1 to 104.
 * @param every 2 to 52: with 4, weeks 4, 8, 12.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { lightWeeks } from '@windlass/core/recovery';
 * lightWeeks('2026-03-02', 5, 4); // [{ from: '2026-03-23', to: '2026-03-29' }]
 * ```
 */
export function lightWeeks(firstDay: string, weeks: number, every: number): readonly DateRange[] {
  requireNumber('lightWeeks', 'weeks', weeks, 1, 104);
  requireNumber('lightWeeks', 'every', every, 2, 52);
  const first = dayNumber(firstDay);
  return Array.from({ length: Math.floor(weeks / every) }, (_, i) => {
    const from = first + 7 * (every * (i + 1) - 1);
    return { from: dateOfDay(from), to: dateOfDay(from + 6) };
  });
}
