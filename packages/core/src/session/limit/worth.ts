import type { Exercise, MuscleId } from '../../anatomy/index.ts';
import { setValue } from '../setValue.ts';

/** What sets are worth together, muscle by muscle: 1 for a prime mover, 0.5 for a helper. */
export function worth(
  work: readonly { readonly exercise: Exercise; readonly sets: number }[],
): number {
  const counted = new Map<string, number>();
  for (const { exercise, sets } of work) {
    for (const muscle of Object.keys({ ...exercise.direct, ...exercise.indirect }) as MuscleId[]) {
      const weight = (exercise.direct[muscle] ?? 0) > 0 ? 1 : 0.5;
      counted.set(muscle, (counted.get(muscle) ?? 0) + weight * sets);
    }
  }
  return [...counted.values()].reduce((sum, sets) => sum + setValue(sets), 0);
}
