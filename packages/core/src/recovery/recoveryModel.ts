import type { MuscleId } from '../anatomy/index.ts';
import {
  ahtiainen2003,
  chen2011,
  damas2016,
  mcLester2001,
  pelland2024,
  recoveryTimeCourse,
} from './recoverySources.ts';

/**
 * The constants of the recovery model, and where they come from.
 *
 * `ln hours = base + exponent · ln(dose) + status`, with the dose counted in hard, familiar sets
 * of the muscle itself to lifting failure. The figures under `fitted` come from the fit in
 * `tests/evidence`, which a test repeats; the others are read from a publication or chosen, as
 * said at each.
 */
export const recoveryModel = {
  fitted: {
    /** ln hours after one hard set to failure, for someone who is not trained. */
    base: 2.9,
    /** Hours grow with the dose to this power: twice the sets, 1.7 times the hours. */
    exponent: 0.79,
    /** Taken off ln hours for each repetition left at the end of the sets. */
    reserve: 0.68,
    /** Added for lowering-heavy work. */
    lowering: 0.41,
    /** Added for work never done before. */
    unaccustomed: 0.74,
    /** Added for someone trained. */
    trained: -0.11,
    source: recoveryTimeCourse,
  },
  /** Weight of a set for a muscle that helps. */
  indirect: { weight: 0.5, source: pelland2024 },
  /** Each stage past failure adds this share of a set: the force losses 56.5 and 38.3 % are as 1.5 to 1. */
  pastFailure: { addedPerStage: 0.5, source: ahtiainen2003 },
  /** More than four repetitions left were never compared, and count as four. */
  mostReserve: 4,
  /** How far unaccustomed work takes the benefit of a reserve away; a choice of caution, no measurement. */
  reserveLostWhenNew: 0.5,
  /** See `unaccustomedShare`. */
  familiarity: { keptAfterOne: 0.3, halfLifeDays: 60, source: damas2016 },
  /** Factors on the hours after unaccustomed work; the order is published, the sizes are chosen. */
  regions: {
    factors: {
      biceps: 1.2,
      brachialis: 1.2,
      brachioradialis: 1.2,
      'triceps-long-head': 1.2,
      'triceps-short-heads': 1.2,
      'rectus-femoris': 0.8,
      vasti: 0.8,
    } as Readonly<Partial<Record<MuscleId, number>>>,
    source: chen2011,
  },
  /**
   * Spread on the log scale. The total fits the people in McLester 2001; how it divides into
   * between people and from one time to the next was never measured and is split evenly.
   */
  spread: { betweenPeople: 0.44, fromTimeToTime: 0.44, source: mcLester2001 },
} as const;
