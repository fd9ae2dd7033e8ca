import type { PlacedSession } from './Calendar.ts';

/** A session as a calendar application knows it. */
export interface CalendarEntry {
  /** The same for the life of the session, so that an import updates and never doubles. */
  readonly uid: string;
  /** Counts the changes; applications keep the entry with the highest. */
  readonly sequence: number;
  readonly status: 'confirmed' | 'cancelled';
  readonly session: PlacedSession;
}
