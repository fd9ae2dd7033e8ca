import type { DayRule } from '../Calendar.ts';

/** A moment at which a session could begin. Times in minutes, days and weeks counted from 1970. */
export interface Start {
  readonly at: number;
  /** When the hours end. */
  readonly close: number;
  readonly day: number;
  /** Weeks begin on Monday. */
  readonly week: number;
  readonly gym?: string;
  readonly dayKind?: string;
  readonly rule?: DayRule;
  /** First day of the unbroken run of days of this kind. */
  readonly run: number;
  readonly light: boolean;
  /** The session that has to begin here. */
  readonly forced?: number;
}

/** The week of a day number; 1970-01-01 was a Thursday. */
export function weekOf(day: number): number {
  return Math.floor((day + 3) / 7);
}
