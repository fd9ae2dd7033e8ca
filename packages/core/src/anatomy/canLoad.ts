import type { Equipment } from '../equipment/index.ts';
import type { Exercise } from './Exercise.ts';

/**
 * Whether a piece of equipment can load an exercise, by its kind and, for one-piece weights, its
 * form. It does not know whether a stack is the right machine: that is what stations say.
 *
 * @example
 * ```ts
 * import { canLoad, findExercise } from '@windlass/core/anatomy';
 * const found = findExercise('dumbbell-curl');
 * const bar = { kind: 'barbell', id: 'b', name: 'Bar', bar: { value: 20, unit: 'kg' } } as const;
 * found.kind === 'found' && canLoad(found.exercise, bar); // false
 * ```
 */
export function canLoad(exercise: Exercise, equipment: Equipment): boolean {
  if (!exercise.loads.includes(equipment.kind)) return false;
  if (equipment.kind !== 'fixed') return true;
  return (exercise.fixedForms ?? ['dumbbell']).includes(equipment.form);
}
