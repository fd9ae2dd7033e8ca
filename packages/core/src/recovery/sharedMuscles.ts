import type { MuscleId } from '../anatomy/index.ts';
import type { MuscleDose } from './muscleDose.ts';

/** A muscle that two sessions both train, and what each asks of it. */
export interface SharedMuscle {
  readonly muscle: MuscleId;
  readonly first: MuscleDose;
  readonly second: MuscleDose;
}

/**
 * The muscles that two sessions share, whatever the sessions are called; the most asked by the
 * lesser of both first.
 *
 * @param first doses of one session, from `muscleDose`.
 * @returns empty when they share none.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { muscleDose, sharedMuscles } from '@windlass/core/recovery';
 * const [row, curl] = ['cable-row', 'dumbbell-curl'].map((id) => {
 *   const found = findExercise(id);
 *   return found.kind === 'found' ? muscleDose([{ exercise: found.exercise, sets: 3 }]) : [];
 * });
 * sharedMuscles(row ?? [], curl ?? []).some(({ muscle }) => muscle === 'biceps'); // true
 * ```
 */
export function sharedMuscles(
  first: readonly MuscleDose[],
  second: readonly MuscleDose[],
): readonly SharedMuscle[] {
  const others = new Map(second.map((dose) => [dose.muscle, dose]));
  const lesser = (shared: SharedMuscle) => Math.min(shared.first.hardSets, shared.second.hardSets);
  return first
    .flatMap((dose) => {
      const other = others.get(dose.muscle);
      return other ? [{ muscle: dose.muscle, first: dose, second: other }] : [];
    })
    .sort((a, b) => lesser(b) - lesser(a) || (a.muscle < b.muscle ? -1 : 1));
}
