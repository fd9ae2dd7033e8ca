import type { Exercise } from './Exercise.ts';
import type { JointId } from './Joint.ts';
import { loadedPositions } from './loadedPositions.ts';

const JOINTS: readonly JointId[] = [
  'shoulder-blade',
  'shoulder',
  'elbow',
  'wrist',
  'spine',
  'hip',
  'knee',
  'ankle',
];

/**
 * The joints that an exercise loads: those that move or hold against the load, those that carry
 * it in a named position, and the wrists of loaded hands.
 *
 * @returns each joint once, from the shoulders down.
 * @example
 * ```ts
 * import { findExercise, jointsLoaded } from '@windlass/core/anatomy';
 * const found = findExercise('leg-press');
 * found.kind === 'found' && jointsLoaded(found.exercise); // ['hip', 'knee']
 * ```
 */
export function jointsLoaded(exercise: Exercise): readonly JointId[] {
  return JOINTS.filter(
    (joint) =>
      exercise.actions.some((action) => jointOf(action) === joint) ||
      loadedPositions.some(
        (position) => position.joint === joint && exercise.positions.includes(position.id),
      ) ||
      (joint === 'wrist' && exercise.hands > 0),
  );
}

function jointOf(action: string): string | undefined {
  if (action.startsWith('finger-')) return 'wrist';
  return JOINTS.find((joint) => action.startsWith(`${joint}-`));
}
