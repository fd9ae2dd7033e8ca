/** Seconds that an `X` lift counts for in totals and cues: a convention, not a measurement. */
export const FAST_LIFT_SECONDS = 1;

/** The least that lowering and lift take together, in seconds; less is a typing error. A convention. */
export const SHORTEST_MOVEMENT_SECONDS = 0.2;

/** The longest phase that is still read as a tempo, in seconds. A convention. */
export const LONGEST_PHASE_SECONDS = 60;

/** The longest repetition that is still read as a tempo, in seconds. A convention. */
export const LONGEST_REP_SECONDS = 120;
