import { findExercise, loadedPositions, type PositionId } from '../anatomy/index.ts';
import type { Limits } from '../safety/index.ts';
import type { Lift } from './liftOf.ts';
import type { LeftOutLift } from './SessionPlan.ts';

/**
 * Why this person's limits keep a lift out, or nothing.
 *
 * The clinician's list is matched against the name of the exercise, a paused joint against the
 * joints it loads, and positions to be avoided against those it is done in. Set-ups of the
 * exercise that leave such a position out are named.
 */
export function liftLimits(lift: Lift, limits: Limits): LeftOutLift | undefined {
  const { exercise, intent } = lift;
  const leftOut = (reason: LeftOutLift['reason'], message: string): LeftOutLift => ({
    kind: 'left-out',
    intent,
    reason,
    message,
  });
  const forbidden = limits.notAllowed.find((words) => isNamed(exercise.name, words));
  if (forbidden !== undefined) {
    return leftOut('not-allowed', `The clinician has ruled out "${forbidden}".`);
  }
  const avoided = limits.positions.find(
    ({ level, position }) => level === 'avoid' && exercise.positions.includes(position),
  );
  if (!avoided) return undefined;
  const { position, reason } = avoided;
  const what = loadedPositions.find(({ id }) => id === position)?.what ?? position;
  return leftOut(
    'joint',
    `${exercise.name} loads ${what}. ${reason.words} ${otherSetUps(lift, position)}`,
  );
}

function otherSetUps({ exercise, intent }: Lift, position: PositionId): string {
  const found = findExercise(intent.exercise);
  const variants = found.kind === 'found' ? found.exercise.variants : [];
  const without = variants.filter(({ removes }) => removes?.includes(position));
  if (without.length === 0) return `Choose another exercise instead of ${exercise.name}.`;
  const names = without.map(({ id, name }) => `"${id}" (${name.toLowerCase()})`);
  return `These set-ups leave that out: ${names.join(', ')}.`;
}

/** Whether the words of a list name an exercise: all of them stand in its name. */
function isNamed(name: string, words: string): boolean {
  const inName = wordsOf(name);
  const named = wordsOf(words);
  return named.length > 0 && named.every((word) => inName.includes(word));
}

function wordsOf(text: string): readonly string[] {
  return (
    text
      .toLowerCase()
      .match(/\p{L}+/gu)
      ?.map((word) => word.replace(/s$/u, '')) ?? []
  );
}
