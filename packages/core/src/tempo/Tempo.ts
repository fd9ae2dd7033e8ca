/**
 * How fast a repetition is done: seconds for each of its four phases, named by what happens to
 * the load. `X` lifts as fast as possible.
 *
 * 0 means that the phase is left out. Seconds have at most 3 decimals (whole milliseconds), so
 * times add up without drift. {@link parseTempo} reads one, {@link checkTempo} checks one.
 */
export interface Tempo {
  /** The eccentric phase. */
  readonly lowerSeconds: number;
  readonly pauseAfterLowerSeconds: number;
  /** The concentric phase. */
  readonly liftSeconds: number | 'X';
  readonly pauseAfterLiftSeconds: number;
}

/** A phase of a repetition, by what happens to the load. */
export type TempoPhase = 'lower' | 'pause-after-lower' | 'lift' | 'pause-after-lift';

/** The two pauses of a repetition. */
export type TempoPause = Extract<TempoPhase, `pause-${string}`>;

/**
 * Which number of a written tempo comes first. Both orders are in trade use and look the same on
 * paper, so the order is chosen and never guessed.
 */
export type TempoOrder = 'lower-first' | 'lift-first';

/**
 * What a repetition begins with: a squat with the lowering, a chin-up, a deadlift, a curl or a
 * leg extension with the lift. It is a property of the exercise; a written tempo does not change.
 */
export type RepStart = 'lower' | 'lift';

/** How a repetition is timed. */
export interface RepTiming {
  /** What the repetition begins with; `lower` when left out. */
  readonly startsWith?: RepStart;
  /** Seconds that an `X` lift counts for, 0.2 to 1; {@link FAST_LIFT_SECONDS} when left out. */
  readonly fastLiftSeconds?: number;
}
