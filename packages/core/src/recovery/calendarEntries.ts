import type { PlacedSession } from './Calendar.ts';
import type { CalendarEntry } from './CalendarEntry.ts';

/** A plan as it is now, and the calendar file that was made of it before. */
export interface CalendarRevision {
  /** Names the plan in every calendar it ever goes to: a random UUID serves well. */
  readonly planId: string;
  /** The sessions of the plan as it is now. */
  readonly sessions: readonly PlacedSession[];
  /** The entries of the file before. Without them every entry is new. */
  readonly previous?: readonly CalendarEntry[];
  /** First date that was planned anew: earlier entries stay. From the first session when left out. */
  readonly from?: string;
}

/**
 * The entries of a calendar file: which sessions are new, moved, unchanged or gone.
 *
 * A session is known by its number in the plan. One that moved or changed keeps its name and counts
 * one change more; one that is gone is cancelled, so that a calendar that has it takes it out.
 *
 * @returns by number; empty for no sessions and nothing before.
 * @example
 * ```ts
 * import { calendarEntries, planCalendar } from '@windlass/core/recovery';
 * const request = {
 *   zone: 'Europe/Oslo',
 *   firstDay: '2026-03-02',
 *   days: 3,
 *   rota: { firstDay: '2026-03-02', days: [{ open: [{ from: '18:00', to: '19:00' }] }] },
 *   sessions: [{ id: 'all', name: 'Whole body', minutes: 60, muscles: { lats: 48 } }],
 * };
 * const plan = planCalendar(request);
 * const sessions = plan.kind === 'planned' ? plan.sessions : [];
 * const entries = calendarEntries({ planId: '7d1f', sessions });
 * entries[1]?.uid; // '7d1f-2@windlass'
 * ```
 */
export function calendarEntries(revision: CalendarRevision): readonly CalendarEntry[] {
  const { planId, sessions, previous = [] } = revision;
  const from = revision.from ?? sessions[0]?.date ?? '';
  const before = new Map(previous.map((entry) => [entry.uid, entry]));
  const now = sessions.map((session): CalendarEntry => {
    const uid = `${planId}-${session.number}@windlass`;
    const known = before.get(uid);
    before.delete(uid);
    const isSame = known?.status === 'confirmed' && looksAlike(known.session, session);
    const sequence = known === undefined ? 0 : known.sequence + (isSame ? 0 : 1);
    return { uid, sequence, status: 'confirmed', session };
  });
  const gone = [...before.values()].map(
    (entry): CalendarEntry =>
      entry.status === 'cancelled' || entry.session.date < from
        ? entry
        : { ...entry, sequence: entry.sequence + 1, status: 'cancelled' },
  );
  return [...now, ...gone].sort((a, b) => a.session.number - b.session.number);
}

function looksAlike(a: PlacedSession, b: PlacedSession): boolean {
  return (
    a.startsAt === b.startsAt &&
    a.endsAt === b.endsAt &&
    a.name === b.name &&
    a.light === b.light &&
    a.gym === b.gym
  );
}
