/**
 * The lifting strength a muscle has lost, as shares of its fresh strength.
 *
 * `fast` comes back within minutes of rest; `slow` stays for the rest of the session. What is
 * left, `1 − fast − slow`, is the muscle's capacity.
 */
export interface MuscleFatigue {
  readonly fast: number;
  readonly slow: number;
}

/** Fatigue by muscle. A muscle that is not listed is fresh. */
export type CapacityState = Readonly<Record<string, MuscleFatigue>>;

/**
 * How strongly an exercise asks each muscle, relative to one another: `{ quadriceps: 1, glutes: 0.5 }`.
 * Only the proportions count; a muscle that is not listed takes no part.
 */
export type MuscleShares = Readonly<Partial<Record<string, number>>>;
