import type { TempoPhase } from './Tempo.ts';

/** How long the phases of one repetition took, measured. */
export interface RepDone {
  readonly lowerSeconds: number;
  readonly pauseAfterLowerSeconds: number;
  readonly liftSeconds: number;
  readonly pauseAfterLiftSeconds: number;
}

/** One phase over all repetitions of a set. */
export interface PhaseComparison {
  readonly phase: TempoPhase;
  readonly asked: number | 'X';
  readonly shortestSeconds: number;
  readonly meanSeconds: number;
  readonly longestSeconds: number;
  /**
   * Done less asked for each repetition, in seconds: negative is too short. `X` asks for no number
   * of seconds, so there is nothing to deviate from.
   */
  readonly deviationSeconds: readonly number[] | 'X';
}

/** One repetition of a set. */
export interface RepComparison {
  /** From 1. */
  readonly rep: number;
  readonly seconds: number;
  readonly secondsUnderLoad: number;
  /** Phases further from what was asked than the tolerance; none when the tempo was kept. */
  readonly phasesOff: readonly TempoPhase[];
}

/** Seconds asked for and seconds done. */
export interface AskedAndDone {
  readonly askedSeconds: number;
  readonly doneSeconds: number;
}

/** What was done against what was asked, or that nothing was done. */
export type TempoComparison =
  | { readonly kind: 'nothing-done' }
  | {
      readonly kind: 'compared';
      /** Phases in the order they happen. */
      readonly phases: readonly PhaseComparison[];
      readonly reps: readonly RepComparison[];
      readonly set: AskedAndDone;
      readonly underLoad: AskedAndDone;
    };
