import { type Exercise, exercises } from '@windlass/core/anatomy';

/*
 * Modules of this folder are worked out when the package is built: a browser gets the values and
 * not what they were worked out from. They export plain data and nothing else.
 */

/** What a chain past failure asks of an exercise. */
export type ChainLift = Pick<
  Exercise,
  | 'id'
  | 'name'
  | 'loads'
  | 'startsWith'
  | 'holds'
  | 'wayBack'
  | 'atFailureAlone'
  | 'eccentricFactor'
  | 'endurance'
>;

/** Lifts with a known load and a place to stop in: what is held for time or thrown has no chain. */
export const chainLifts: readonly ChainLift[] = exercises
  .filter(({ timed, holds, loads }) => !timed && holds.length > 0 && loads.some(isKnown))
  .map((exercise) => {
    const { id, name, loads, startsWith, holds } = exercise;
    const { wayBack, atFailureAlone, eccentricFactor, endurance } = exercise;
    const atFailure = { wayBack, atFailureAlone, eccentricFactor, endurance };
    return { id, name, loads, startsWith, holds, ...atFailure };
  });

function isKnown(load: Exercise['loads'][number]): boolean {
  return load !== 'band';
}
