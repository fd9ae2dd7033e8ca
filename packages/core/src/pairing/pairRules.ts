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
   * How much of what work for one exercise takes from a muscle shows in another exercise, as a
   * factor on the model. Studies agree on the direction; none gave the size, so it is bounded:
   * at 1 a set that trains half of a lift's muscles would cost as much as a set of the lift itself,
   * and leg extensions as much of a squat as the whole session before it (8.0 to 5.4 repetitions,
   * Spreuwenberg 2006). Coaches take 10 to 30 % off a bench press after flies, which is 0.6 and
   * more. Low: the one count of a pair, which is only recalled (9.3 to 7.9 repetitions).
   */
  transfer: { low: 0.1, likely: 0.6, high: 1, level: 0.8 } satisfies Band,
  /** Spread of the logarithm of endurance between people, which the repetitions carry besides. */
  enduranceLogSd: 0.35,
} as const;
