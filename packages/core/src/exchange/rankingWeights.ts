import type { MuscleId } from '../anatomy/index.ts';

/**
 * What counts in the ranking beside the muscles, in shares of the work. Choices of this project,
 * not measurements; the order is what is tested.
 */
export const rankingWeights = {
  sameMovement: 0.15,
  sameSpan: 0.05,
  /** In a list for an area, for exercises that take several joints along. */
  compound: 0.5,
  /** For muscles that are not main muscles of their area, as a factor on the share. */
  smallMuscle: 0.6,
  /** For each position that asks for less load or range. */
  position: -0.1,
  /** Stops or repetitions in reserve are needed because nobody is there. */
  careAlone: -0.1,
  /** The load cannot be set in small steps: own body, band. */
  load: -0.05,
  /** One hand works while the other may not: the clinician has to agree. */
  oneHand: -0.2,
  /** For each set-up that is needed: what fits as it is comes before what has to be limited. */
  setUp: -0.1,
} as const;

/** Muscles that a list for an area looks after first. */
export const mainMuscles: readonly MuscleId[] = [
  'chest',
  'upper-chest',
  'lats',
  'mid-back',
  'front-deltoid',
  'side-deltoid',
  'rear-deltoid',
  'biceps',
  'brachialis',
  'triceps-long-head',
  'triceps-short-heads',
  'abdominals',
  'obliques',
  'spinal-erectors',
  'glutes',
  'hamstrings',
  'vasti',
  'rectus-femoris',
];

/** Least share of the work in common with the exercise that is exchanged. */
export const LEAST_OVERLAP = 0.3;

/** Least share of the work that a suggestion for an area does there. */
export const LEAST_IN_AREA = 0.4;
