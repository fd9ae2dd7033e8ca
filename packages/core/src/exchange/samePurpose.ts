import { type Exercise, type MuscleId, muscles } from '../anatomy/index.ts';
import { areaGroups } from './Exchange.ts';

/**
 * Whether an exercise has a prime mover in the part of the body that another one is mainly for:
 * what presses overhead is not for the chest, however much of the work the two share.
 */
export function samePurpose(wanted: Exercise, candidate: Exercise): boolean {
  const [main] = primeMovers(wanted).toSorted(
    (a, b) => (wanted.direct[b] ?? 0) - (wanted.direct[a] ?? 0),
  );
  const area = Object.values(areaGroups).find((groups) => main && groups.includes(groupOf(main)));
  return primeMovers(candidate).some((muscle) => area?.includes(groupOf(muscle)));
}

function primeMovers(exercise: Exercise): readonly MuscleId[] {
  return Object.keys(exercise.direct) as MuscleId[];
}

function groupOf(muscle: MuscleId) {
  const found = muscles.find(({ id }) => id === muscle);
  if (!found) throw new RangeError(`samePurpose: there is no muscle ${muscle}`);
  return found.group;
}
