import type { RecoveryHabit } from './hoursUntilReady.ts';
import { hoursUntilReady } from './hoursUntilReady.ts';
import { muscleDose } from './muscleDose.ts';
import type { TrainedSets, TrainingStatus } from './TrainedSets.ts';

/** Who trains, and how carefully to plan. */
export interface MuscleHoursOptions {
  readonly status?: TrainingStatus;
  readonly habit?: RecoveryHabit;
  /** Which of the three times to plan by; `likely` when left out. */
  readonly by?: 'earliest' | 'likely' | 'cautious';
}

/**
 * The hours that a session's work asks for, muscle by muscle, as a calendar takes them.
 *
 * @param work what the session holds.
 * @returns hours, rounded up to the next quarter; empty for no work.
 * @throws RangeError as `muscleDose` does.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { muscleHours } from '@windlass/core/recovery';
 * const found = findExercise('leg-extension');
 * const work = found.kind === 'found' ? [{ exercise: found.exercise, sets: 3 }] : [];
 * muscleHours(work, { status: 'trained' })['vasti']; // 39
 * ```
 */
export function muscleHours(
  work: readonly TrainedSets[],
  options: MuscleHoursOptions = {},
): Readonly<Record<string, number>> {
  return Object.fromEntries(
    muscleDose(work, options.status).map(({ muscle, hardSets }) => {
      const hours = hoursUntilReady(hardSets, options.status, options.habit);
      return [muscle, Math.ceil(4 * hours[options.by ?? 'likely']) / 4];
    }),
  );
}
