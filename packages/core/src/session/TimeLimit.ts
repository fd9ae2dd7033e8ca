import type { SessionMinutes } from './SessionPlan.ts';

/** Something that a time limit took out of a session. */
export interface Dropped {
  readonly kind: 'warm-up-set' | 'chain' | 'work-set' | 'lift';
  /** Which lift, counted from 0. */
  readonly lift: number;
  /** Which of its warm-up sets or work sets, counted from 0; 0 for a whole lift
   * and for what goes on past failure. */
  readonly step: number;
  /** By the session without the limit. */
  readonly minutesSaved: number;
  /** What it is, and why it went before other things. */
  readonly message: string;
}

/** Neighbouring lifts done by turns, as another way to save time. */
export interface TurnsInstead {
  /** Places of the lifts, two by two. */
  readonly lifts: readonly (readonly [number, number])[];
  /** How long the whole session would take, with nothing dropped. */
  readonly minutes: number;
  readonly message: string;
}

/** What became of a session that was to be no longer than so many minutes. */
export interface TimeLimit {
  readonly minutesAtMost: number;
  /** How long it would have been. */
  readonly without: SessionMinutes;
  /** The least useful first; empty where everything fits. */
  readonly dropped: readonly Dropped[];
  /** Where something was dropped: what taking turns would save instead. */
  readonly turns?: TurnsInstead;
}
