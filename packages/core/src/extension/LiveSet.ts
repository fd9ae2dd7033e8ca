import type { LoadValue } from '../load/index.ts';
import type { Stage } from './Stage.ts';

/** A set that is about to be done. */
export interface LiveSetPlan {
  readonly exerciseId: string;
  /** Everything that moves, in the unit it was given in. */
  readonly load: LoadValue;
  /** An allowed chain, from `planChain`; lifting alone for an ordinary set. */
  readonly stages: readonly Stage[];
  /** Seconds of one full repetition as prescribed. */
  readonly secondsPerRep: number;
  /** The set ends when it has lasted so long. */
  readonly maxSeconds: number;
}

/**
 * What happens in a set. Seconds count from any moment that the application keeps for the whole
 * set, and never run back.
 */
export type LiveSetEvent =
  | { readonly kind: 'started'; readonly atSeconds: number }
  /** A repetition was finished: full, part-range or assisted, by the stage. */
  | { readonly kind: 'rep'; readonly atSeconds: number }
  /** A repetition was tried and could not be finished. */
  | { readonly kind: 'failed'; readonly atSeconds: number }
  /** Lifting goes on: lighter, after a pause, with help, or part-range. */
  | { readonly kind: 'lifting-resumed'; readonly atSeconds: number }
  | { readonly kind: 'hold-begun'; readonly atSeconds: number }
  | { readonly kind: 'hold-ended'; readonly atSeconds: number }
  | { readonly kind: 'lowering-begun'; readonly atSeconds: number }
  | { readonly kind: 'lowering-ended'; readonly atSeconds: number }
  /** Ended by choice; with how many more repetitions the lifter says were left. */
  | {
      readonly kind: 'stopped';
      readonly atSeconds: number;
      readonly reason: 'target-reached' | 'chosen';
      readonly repsLeft?: number;
    }
  /** A sign to stop for, by the id of a stop rule of `@windlass/core/safety`. */
  | { readonly kind: 'sign'; readonly atSeconds: number; readonly rule: string };

/** A set as it is being done: plain data, to be saved and taken up again at any moment. */
export interface LiveSet {
  readonly plan: LiveSetPlan;
  /** What has happened, in order. */
  readonly log: readonly LiveSetEvent[];
  /** What was taken back, the last first; gone with the next event. */
  readonly undone: readonly LiveSetEvent[];
}
