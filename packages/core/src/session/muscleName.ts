import { type MuscleId, muscles } from '../anatomy/index.ts';
import { inSentence } from '../basis/index.ts';

/** The name of a muscle as it stands within a sentence. */
export function muscleName(muscle: MuscleId): string {
  return inSentence(muscles.find(({ id }) => id === muscle)?.name ?? muscle);
}
