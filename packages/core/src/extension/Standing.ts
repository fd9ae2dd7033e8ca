import type { LiveSetEvent } from './LiveSet.ts';
import type { LoweringControl } from './loweringControl.ts';
import type { Stage } from './Stage.ts';

/** What the lifter is doing. `between`: the load is down or on its way back up. */
export type LivePhase = 'ready' | 'lifting' | 'between' | 'holding' | 'lowering' | 'ended';

/** One stage as it was done. */
export interface StageDone {
  readonly stage: Stage;
  /** Seconds of each repetition, hold or lowering, in order. */
  readonly seconds: readonly number[];
  /** Seconds that were asked for each; null for a hold, which lasts as long as it can. */
  readonly askedSeconds: number | null;
  /** The stage ended because a repetition could not be finished. */
  readonly failed: boolean;
}

/** Why a set ended. */
export type LiveEnd =
  /** The last stage was done: its last repetition failed, its hold or its lowerings were over. */
  | { readonly by: 'chain-done' }
  | {
      readonly by: 'choice';
      readonly reason: 'target-reached' | 'chosen';
      readonly repsLeft?: number;
    }
  /** A stop rule, by its id. */
  | { readonly by: 'stop-rule'; readonly rule: string };

/** Where a set stands, worked out from its log. */
export interface LiveStanding {
  readonly phase: LivePhase;
  /** Index of the stage that is being done or was done last; -1 before the start. */
  readonly stage: number;
  readonly stages: readonly StageDone[];
  /** Second of the start; null before it. */
  readonly startedAt: number | null;
  /** Second of the last repetition's end or the stage's begin, from which the next is timed. */
  readonly since: number;
  /** Second of the last event; 0 before the first. */
  readonly lastAt: number;
  readonly end: LiveEnd | null;
  /** Every sign that was reported, also after the end. */
  readonly signs: readonly string[];
  /** Repetitions, holds and lowerings; an attempt that failed is not timed. */
  readonly secondsUnderLoad: number;
  /** Whether lowerings are still under control; null before the first. */
  readonly control: LoweringControl | null;
  /** What can be said next; a sign always. */
  readonly next: readonly LiveSetEvent['kind'][];
}
