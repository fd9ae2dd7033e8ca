import type { Exercise, MuscleId } from '../anatomy/index.ts';
import { areaGroups } from './Exchange.ts';
import { muscleOf } from './muscleOf.ts';

/**
 * Whether an exercise has a prime mover in the part of the body that another one is mainly for:
 * what presses overhead is not for the chest, however much of the work the two share.
 */
export function samePurpose(wanted: Exercise, candidate: Exercise): boolean {
  const [main] = primeMovers(wanted).toSorted(
    (a, b) => (wanted.direct[b] ?? 0) - (wanted.direct[a] ?? 0),
  );
  const area = Object.values(areaGroups).find(
    (groups) => main && groups.includes(muscleOf(main).group),
  );
  return primeMovers(candidate).some((muscle) => area?.includes(muscleOf(muscle).group));
}

function primeMovers(exercise: Exercise): readonly MuscleId[] {
  return Object.keys(exercise.direct) as MuscleId[];
}
