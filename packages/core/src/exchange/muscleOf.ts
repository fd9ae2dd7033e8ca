import { type Muscle, type MuscleId, muscles } from '../anatomy/index.ts';

/** @throws RangeError for a muscle that is not in the table. */
export function muscleOf(muscle: MuscleId): Muscle {
  const found = muscles.find(({ id }) => id === muscle);
  if (!found) throw new RangeError(`exchange: there is no muscle ${muscle}`);
  return found;
}
