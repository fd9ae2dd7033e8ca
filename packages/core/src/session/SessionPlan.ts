import type { Unit } from '../load/index.ts';
import type { MuscleReadiness } from '../recovery/readiness.ts';
import type { Adviser, Caution, StopRule } from '../safety/index.ts';
import type { LiftPlan, Refusal } from './LiftPlan.ts';
import type { TimeLimit } from './TimeLimit.ts';

/** A stretch of the session. `lift` counts into the plan's lifts; `step` into its ramp or sets. */
export interface TimelineItem {
  readonly kind: 'change' | 'warm-up' | 'work' | 'rest';
  readonly lift: number;
  readonly step: number;
  readonly startSeconds: number;
  readonly seconds: number;
}

/** The length of a session, in minutes, with its parts. No rest follows the last set. */
export interface SessionMinutes {
  readonly change: number;
  readonly warmUp: number;
  readonly work: number;
  readonly rest: number;
  readonly total: number;
}

/** A time after a session, and the first day at whose same time of day it has passed. */
export interface NextTime {
  /** Elapsed hours from the beginning of this session. */
  readonly hours: number;
  /** `YYYY-MM-DD`. */
  readonly date: string;
}

/** When the same muscles can work as hard again. */
export interface NextSession {
  /** One, five and nine people in ten have all of these muscles ready by then. */
  readonly earliest: NextTime;
  readonly likely: NextTime;
  readonly cautious: NextTime;
  /** The day to plan for: the likely one, or the one that somebody has fixed. */
  readonly date: string;
  readonly overruled?: { readonly chosen: string };
  /** What is to be said about a day that somebody has fixed; empty otherwise. */
  readonly notes: readonly string[];
  /** Muscle by muscle, the last to be ready first. */
  readonly muscles: readonly MuscleReadiness[];
}

/** A whole session. */
export interface PlannedSession {
  readonly kind: 'session';
  readonly clientName: string;
  readonly gymName: string;
  readonly date: string;
  readonly unit: Unit;
  readonly lifts: readonly LiftPlan[];
  readonly timeline: readonly TimelineItem[];
  readonly minutes: SessionMinutes;
  /** Where the session was to be no longer than so many minutes. */
  readonly limit?: TimeLimit;
  /** Left out where nothing is done. */
  readonly next?: NextSession;
  /** Wishes for the whole session that were not followed. */
  readonly refused: readonly Refusal[];
  readonly cautions: readonly Caution[];
  readonly stopRules: readonly StopRule[];
}

/** No session before somebody was asked. */
export interface NoSession {
  readonly kind: 'ask-first';
  readonly clientName: string;
  readonly date: string;
  readonly reasons: readonly string[];
  readonly ask: readonly Adviser[];
  readonly cautions: readonly Caution[];
}

/** Not even the shortest useful part of the session fits into the time. */
export interface TooShort {
  readonly kind: 'too-short';
  readonly clientName: string;
  readonly date: string;
  readonly minutesAtMost: number;
  /** The shortest session that keeps all that is fixed. */
  readonly leastMinutes: number;
  readonly message: string;
  readonly cautions: readonly Caution[];
}

/** A session, the question that comes before one, or why there is no time for one. */
export type SessionPlan = PlannedSession | NoSession | TooShort;
