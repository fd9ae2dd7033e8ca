import type { Band } from '../basis/index.ts';

/** Choices of this project, except where a source is named. */
export const pairRules = {
  /** Part of an isolation exercise that must be for the target. */
  isolationShare: 0.5,
  /** Part of a compound lift that must be for the target. */
  compoundShare: 0.2,
  /** A muscle with a smaller part in the compound lift is not a helper that can end it. */
  helperShare: 0.1,
  /** Part of the isolation exercise that may fall on a helper known to give out first. */
  limitingShare: 0.05,
  /** A helper with less of its strength left is spent. */
  spentBelow: 0.8,
  /** A longer way between the two lifts is flagged. */
  transitionSeconds: 10,
  /**
   * How much of what the isolation set takes from its muscle shows in the compound lift, as a
   * factor on the model. Studies agree on the direction; none gave the size.
   */
  transfer: { low: 0.3, likely: 1, high: 1.6, level: 0.8 } satisfies Band,
  /** Spread of the logarithm of endurance between people, which the repetitions carry besides. */
  enduranceLogSd: 0.35,
} as const;
