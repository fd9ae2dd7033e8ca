import { requireNumber } from '../basis/index.ts';
import { NINE_IN_TEN } from './nineInTen.ts';
import { recoveryModel } from './recoveryModel.ts';
import type { TrainingStatus } from './TrainedSets.ts';

/** Hours of elapsed time after a session until a muscle is ready for work as hard again. */
export interface ReadyHours {
  /** One in ten is ready by then. */
  readonly earliest: number;
  /** One in two. */
  readonly likely: number;
  /** Nine in ten. */
  readonly cautious: number;
}

/** What is known of how this person recovers, on the log scale of hours; see `learnRecovery`. */
export interface RecoveryHabit {
  /** Added to ln hours; above 0 recovers more slowly than most. */
  readonly shift: number;
  /** Standard deviation of that shift. */
  readonly shiftSd: number;
}

/** Someone of whom nothing is known yet. */
export const unknownHabit: RecoveryHabit = {
  shift: 0,
  shiftSd: recoveryModel.spread.betweenPeople,
};

/**
 * Hours until a muscle is ready after a dose, as the times by which one, five and nine people in
 * ten are.
 *
 * `ln hours = base + exponent · ln(hardSets) + status + shift`, with a normal spread. Fitted to
 * published bounds of the hours until repetitions and force are back (`recoveryModel`). Age is no
 * argument, because studies of older lifters disagree about the direction.
 *
 * @param hardSets dose of one muscle in one session from `muscleDose`, 0 to 1000; 0 is ready at once.
 * @param status who trains; `recreational` when left out.
 * @param habit how this person was seen to recover; nothing known when left out.
 * @throws RangeError for a dose outside its range or a negative `shiftSd`.
 * @example
 * ```ts
 * import { hoursUntilReady } from '@windlass/core/recovery';
 * Math.round(hoursUntilReady(3).likely); // 43
 * hoursUntilReady(0); // { earliest: 0, likely: 0, cautious: 0 }
 * ```
 */
export function hoursUntilReady(
  hardSets: number,
  status: TrainingStatus = 'recreational',
  habit: RecoveryHabit = unknownHabit,
): ReadyHours {
  requireNumber('hoursUntilReady', 'hardSets', hardSets, 0, 1000);
  requireNumber('hoursUntilReady', 'shift', habit.shift);
  requireNumber('hoursUntilReady', 'shiftSd', habit.shiftSd, 0);
  const { fitted, spread } = recoveryModel;
  const middle =
    fitted.base +
    fitted.exponent * Math.log(hardSets) +
    (status === 'trained' ? fitted.trained : 0) +
    habit.shift;
  const reach = NINE_IN_TEN * Math.hypot(habit.shiftSd, spread.fromTimeToTime);
  return {
    earliest: Math.exp(middle - reach),
    likely: Math.exp(middle),
    cautious: Math.exp(middle + reach),
  };
}
