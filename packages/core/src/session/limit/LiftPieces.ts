import type { Exercise } from '../../anatomy/index.ts';

/** What a time limit may leave of one lift, and the seconds of each part. */
export interface LiftPieces {
  /** Its place among the lifts of the session. */
  readonly lift: number;
  readonly exercise: Exercise;
  /** Setting up, the warm-up sets that stay, and the sets that stay as long as the lift does. */
  readonly leanSeconds: number;
  /** How many sets that is: one, or all where their number is fixed. */
  readonly leanSets: number;
  /** Each further set with the rest before it, in order. */
  readonly furtherSets: readonly number[];
  /** What goes on past lifting failure in its last set; 0 where nothing does. */
  readonly chainSeconds: number;
  /** Each warm-up set that may go, the lightest first. */
  readonly lightSteps: readonly number[];
  /** Somebody has fixed something in it, so it stays. */
  readonly stays: boolean;
}

/** What is left of one lift. */
export interface KeptLift {
  readonly lift: number;
  /** All its sets together. */
  readonly sets: number;
  /** How many of its lightest warm-up sets go. */
  readonly skipSteps: number;
  /** Its last set ends at lifting failure. */
  readonly skipChain: boolean;
}
