/**
 * The shape of a ramp: choices of this project after worked examples of coaches, not
 * measurements. Loads are shares of the work load where nothing else is said.
 */
export const rampRules = {
  /** The lightest load opens the ramp when it is at least this share, else `openingShare` does. */
  lightestOpensFrom: 0.15,
  openingShare: 0.3,
  /** A single step is at least this heavy. */
  singleStepShare: 0.6,
  /** Share of the last step in a ramp of two, three, and more steps. */
  lastShares: [0.82, 0.87, 0.9],
  /** Nobody new to lifting goes nearer to the work load than this. */
  lastShareWhenNew: 0.85,
  /** No step is nearer to the work load than this, unless everything lighter is. */
  heaviestStepShare: 0.94,
  /** Steps = demand × (1 + this × ln(work load / opening load)). */
  stepsPerLogDistance: 2.6,
  /** Demand rises from 0 at this share of the one-rep max to 1 at the next, and to 1.2 at most. */
  noDemandBelow: 0.55,
  fullDemandAt: 0.9,
  mostDemand: 1.2,
  mostSteps: 7,
  /** Warm muscles still get one step for work loads from this share of the one-rep max. */
  warmStepFrom: 0.75,
  /** Most repetitions of each step, by number of steps; at most 18 in all, never rising. */
  mostReps: [
    [6],
    [8, 4],
    [8, 4, 2],
    [8, 5, 3, 1],
    [7, 5, 3, 2, 1],
    [6, 4, 3, 2, 1, 1],
    [5, 4, 3, 2, 1, 1, 1],
  ],
  /** From this share of the one-rep max two repetitions at most, then one. */
  twoRepsFrom: 0.75,
  oneRepFrom: 0.85,
  /** Up to this share a step is for circulation, from the next on it primes, between it rehearses. */
  circulationUpTo: 0.5,
  primerFrom: 0.85,
  restSeconds: { circulation: 30, rehearsal: 45, primer: 60 },
  lastRestSeconds: 120,
  mostLastRestSeconds: 300,
  /** A step above the work load aims at this much more, and goes no higher than the next. */
  aboveWork: 0.03,
  mostAboveWork: 0.05,
  aboveRestSeconds: 300,
  /** Capacity at the first work rep, against what it would be without the ramp. */
  leastCapacity: 0.97,
  /** A jump that grows counts as much as a load that is 10 % of the work load off. */
  growthCost: 100 ** 2,
} as const;
