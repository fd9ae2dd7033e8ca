import type { Load } from '../load/index.ts';

/** How a set ended, as far as it tells where failure would have been. */
export type SetEnd =
  /** The next repetition was tried and could not be done. With 0 repetitions: not even one. */
  | { readonly kind: 'failure' }
  /** Stopped by choice; the lifter said how many more were left. */
  | { readonly kind: 'reserve'; readonly repsLeft: number }
  /** Stopped at the target; at least so many more were surely there. */
  | { readonly kind: 'more'; readonly atLeast: number };

/** What stood on a set besides its outcome. */
export interface SetConditions {
  /** Everything that moves, above 0: for a chin-up, body and belt together. */
  readonly load: Load;
  /** Seconds under load per repetition; left out when nobody knows. */
  readonly secondsPerRep?: number;
  /** Share of fresh strength left at the start of the set, above 0 to 1. Left out: fresh. */
  readonly capacity?: number;
}

/** One set as it was done. */
export interface PerformedSet extends SetConditions {
  /** Whole repetitions done, 0 to 200. */
  readonly reps: number;
  readonly end: SetEnd;
  /** Day it was done, counted from any fixed day. Sets with the same whole number are one session. */
  readonly day: number;
}
