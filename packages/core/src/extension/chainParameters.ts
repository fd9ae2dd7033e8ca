import type { Band } from '../basis/index.ts';

/**
 * What is uncertain when a set goes on past lifting failure, as bands between people (level 0.8).
 *
 * The width of each is a choice of this project around the cited figures; no study measured them
 * after lifting failure.
 */
export const chainParameters = {
  /** Holding strength against lifting strength, at the place where the lift fails. */
  isometric: { low: 1.05, likely: 1.15, high: 1.25, level: 0.8 },
  /**
   * Lowering strength against holding strength, as a factor on what the exercise's own ratio gives;
   * never below 1. Low and high together with the holding band span 1.12 to 1.38 of lifting
   * strength for a ratio of 1.25.
   */
  loweringOverHolding: { low: 0.95, likely: 1, high: 1.05, level: 0.8 },
  /** Fatigue rate of a sustained effort, as a factor on the published rate of the joint. */
  fatigueRate: { low: 0.7, likely: 1, high: 1.45, level: 0.8 },
  /**
   * The same for lowerings, on top. The high end is the fall in strength from the first to the
   * second forced repetition (peak help from 19 to 33 % of the load), several times what the rate
   * of a held load gives.
   */
  loweringCost: { low: 0.8, likely: 1.2, high: 3.5, level: 0.8 },
  /** Recovery at rest, as a factor on the published rate. */
  restRecovery: { low: 0.6, likely: 1, high: 1.5, level: 0.8 },
  /** The load as a share of the one-rep max, as a factor on the share given. */
  intensity: { low: 0.96, likely: 1, high: 1.04, level: 0.8 },
  /** Strength in the lengthened half of the range, against the whole range. */
  partRange: { low: 1.03, likely: 1.1, high: 1.2, level: 0.8 },
} as const satisfies Readonly<Record<string, Band>>;
