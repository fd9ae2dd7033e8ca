import type { MuscleId } from '@windlass/core/anatomy';
import { inSentence } from '@windlass/core/basis';
import { type TrainedLift, trainedLifts } from '../precomputed/trainedLifts.ts';
import { exerciseOf } from '../shared/exerciseFields.ts';
import { said } from './words.ts';

/** The exercises of a list that train a muscle, in words; those in which it only helps say so. */
export function exercisesFor(
  muscle: MuscleId,
  rows: readonly { readonly exercise: string }[],
): string {
  const lifts = [...new Set(rows.map(({ exercise }) => exercise))].map((id) =>
    exerciseOf(trainedLifts, id),
  );
  return said.list(
    lifts.flatMap((lift) => {
      const role = roleOf(lift, muscle);
      if (role === 'none') return [];
      const name = inSentence(lift.name);
      return [role === 'helps' ? said.helps(name) : name];
    }),
  );
}

function roleOf({ direct, indirect }: TrainedLift, muscle: MuscleId): 'moves' | 'helps' | 'none' {
  if ((direct[muscle] ?? 0) > 0) return 'moves';
  return (indirect[muscle] ?? 0) > 0 ? 'helps' : 'none';
}
