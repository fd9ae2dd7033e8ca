import type { ReachableLoad } from '@windlass/core/equipment';
import type { LiveSetEvent, LiveSetPlan } from '@windlass/core/extension';
import type { SetEnd } from '@windlass/core/strength';

/** How a set went on past lifting failure, worked out from its live log when it was over. */
export interface PastFailureRecord {
  /** Full repetitions of the opening lift. */
  readonly reps: number;
  /** What they say of strength; left out where they say nothing. */
  readonly end?: SetEnd;
  /** How many stages after failure were begun; left out in what was written before they counted. */
  readonly stagesDone?: number;
  /** What was done after failure, in words for a log. */
  readonly note: string;
  /** A stop rule that ended it, by its id. */
  readonly sign?: string;
}

/** What happens in a session, without its time. A step counts into the steps of the session. */
export type FloorHappening =
  /** A set begins; its first repetition after the lead-in, where it is counted by tempo. */
  | { readonly kind: 'begun'; readonly leadInSeconds: number; readonly counted: boolean }
  /** A repetition is over: by the count, or said by hand. */
  | { readonly kind: 'rep'; readonly by: 'count' | 'hand' }
  /** One repetition less than was counted. */
  | { readonly kind: 'rep-less' }
  /** The count stands still. */
  | { readonly kind: 'held' }
  | { readonly kind: 'counted-on'; readonly leadInSeconds: number }
  /** The next repetition could not be finished. */
  | { readonly kind: 'failed' }
  /** The load is down by choice; how many were left is said after. */
  | { readonly kind: 'stopped' }
  /** How the last set ended; without an end nobody knows. */
  | { readonly kind: 'told'; readonly end?: SetEnd }
  /** A set that needs no counting is done: a warm-up set. */
  | { readonly kind: 'done' }
  /** A set that is done is put right. */
  | {
      readonly kind: 'put-right';
      readonly step: number;
      readonly reps: number;
      readonly end?: SetEnd;
    }
  | { readonly kind: 'gone-to'; readonly step: number }
  | { readonly kind: 'left-out'; readonly steps: readonly number[] }
  | { readonly kind: 'loaded'; readonly steps: readonly number[]; readonly load: ReachableLoad }
  | { readonly kind: 'rest-changed'; readonly seconds: number }
  | { readonly kind: 'rest-over' }
  /** The set is to go on past failure; `null` takes that back. */
  | { readonly kind: 'carried-on'; readonly step: number; readonly plan: LiveSetPlan | null }
  | { readonly kind: 'live'; readonly event: LiveSetEvent }
  | { readonly kind: 'live-over'; readonly record: PastFailureRecord }
  /** A sign to stop for, by the id of a stop rule, and what it ends. */
  | {
      readonly kind: 'sign';
      readonly rule: string;
      readonly ends: 'the-set' | 'the-exercise' | 'the-session';
      /** The step that it ended past failure, told right after the end. */
      readonly step?: number;
    }
  | { readonly kind: 'undone' }
  | { readonly kind: 'redone' };

/** Something that happened, with the millisecond of the clock on the wall. */
export type FloorEvent = FloorHappening & { readonly at: number };
