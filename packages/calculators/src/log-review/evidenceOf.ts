import type { LoggedSet } from '@windlass/core/progress';
import { dayNumber } from '@windlass/core/recovery';

/** What lies longer before the last session of a lift says little of its next load. */
export const EVIDENCE_DAYS = 42;

/** The sets of one lift that its next load is worked out from, oldest first; notes are left out. */
export function evidenceOf(log: readonly LoggedSet[], exercise: string): readonly LoggedSet[] {
  const own = log.filter((set) => set.exercise === exercise);
  const last = own
    .map(({ date }) => date)
    .sort()
    .at(-1);
  if (last === undefined) return [];
  const from = dayNumber(last) - EVIDENCE_DAYS;
  return own
    .filter(({ date }) => dayNumber(date) > from)
    .map(({ note: _, ...set }) => set)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}
