import { bad, good, type Outcome, type Problem } from '../basis/index.ts';
import type { Exercise, Variant } from './Exercise.ts';
import type { ExerciseShares } from './Muscle.ts';

type Check = (code: string, ok: boolean, message: string) => readonly Problem[];

/**
 * Checks a list of exercises for what types cannot say: each id once, shares that add up to 1,
 * set-ups that change something that is there.
 *
 * @param list the library's exercises, an application's own, or both together.
 * @returns the list, or every problem with its place in the list.
 * @example
 * ```ts
 * import { exercises, validateExercises } from '@windlass/core/anatomy';
 * validateExercises(exercises).ok; // true
 * ```
 */
export function validateExercises(list: readonly Exercise[]): Outcome<readonly Exercise[]> {
  const problems = list.flatMap((exercise, index) => {
    const first = list.findIndex(({ id }) => id === exercise.id);
    const at = checkAt([index]);
    return [
      ...at(
        'repeated-id',
        first === index,
        `Give each exercise its own id; ${exercise.id} is taken.`,
      ),
      ...exerciseProblems(exercise, at),
      ...exercise.variants.flatMap((variant, place) =>
        variantProblems(exercise, variant, checkAt([index, 'variants', place])),
      ),
    ];
  });
  return problems.length ? bad(...problems) : good(list);
}

function checkAt(path: Problem['path']): Check {
  return (code, ok, message) => (ok ? [] : [{ code: `anatomy.${code}`, path, message }]);
}

function exerciseProblems(exercise: Exercise, check: Check): readonly Problem[] {
  const { id, loads, holds, movedShare } = exercise;
  const body = loads.includes('body');
  return [
    ...check(
      'bad-id',
      /^[a-z0-9]+(-[a-z0-9]+)*$/.test(id),
      'Write the id in small letters, digits and single hyphens.',
    ),
    ...check('no-load', loads.length > 0, 'Name at least one kind of load.'),
    ...check('no-action', exercise.actions.length > 0, 'Name at least one joint action.'),
    ...check(
      'body-alone',
      !body || loads.length === 1,
      'Make the version with the own body an exercise of its own.',
    ),
    ...check(
      'moved-share',
      body === (movedShare !== undefined),
      'Give a body-weight share where the body is the load, and only there.',
    ),
    ...check(
      'moved-share-range',
      !movedShare ||
        (movedShare.low > 0 && movedShare.low <= movedShare.high && movedShare.high <= 1),
      'Give body-weight shares above 0 and up to 1, the lower one first.',
    ),
    ...check(
      'fixed-forms',
      !exercise.fixedForms || loads.includes('fixed'),
      'Name forms of one-piece weights only where they can be the load.',
    ),
    ...check(
      'holds',
      holds.every(({ momentArm }) => momentArm > 0 && momentArm <= 1.2),
      'Give moment arms above 0 and up to 1.2.',
    ),
    ...check('hold-twice', onlyOnce(holds.map(({ at }) => at)), 'Give each hold position once.'),
    ...check(
      'eccentric',
      exercise.eccentricFactor >= 1 && exercise.eccentricFactor <= 2,
      'Give an eccentric factor from 1 to 2.',
    ),
    ...check(
      'variant-twice',
      onlyOnce(exercise.variants.map((variant) => variant.id)),
      'Give each set-up its own id.',
    ),
    ...shareProblems(exercise.direct, exercise.indirect, check),
  ];
}

function variantProblems(exercise: Exercise, variant: Variant, check: Check): readonly Problem[] {
  const { positions } = exercise;
  const { removes, adds } = variant;
  return [
    ...check(
      'removes',
      !removes?.length || removes.some((position) => positions.includes(position)),
      'Remove at least one position that the exercise has.',
    ),
    ...check(
      'adds',
      !adds?.some((position) => positions.includes(position)),
      'Add only positions that the exercise does not have.',
    ),
    ...check(
      'both-shares',
      (variant.direct === undefined) === (variant.indirect === undefined),
      'Give direct and indirect shares together, or neither.',
    ),
    ...(variant.direct ? shareProblems(variant.direct, variant.indirect ?? {}, check) : []),
  ];
}

function shareProblems(
  direct: ExerciseShares,
  indirect: ExerciseShares,
  check: Check,
): readonly Problem[] {
  const prime = Object.values(direct);
  const helping = Object.values(indirect);
  const all = [...prime, ...helping];
  const twice = Object.keys(direct).some((muscle) => muscle in indirect);
  return [
    ...check(
      'share-range',
      all.every((share) => share > 0 && share <= 1),
      'Give shares above 0 and up to 1.',
    ),
    // Rounding of a dozen hundredths added as doubles stays far below a millionth.
    ...check(
      'share-sum',
      Math.round(1e6 * sum(all)) === 1e6,
      `Make the shares add up to 1; they add up to ${sum(all).toFixed(3)}.`,
    ),
    ...check(
      'share-role',
      sum(prime) > sum(helping),
      'Give prime movers together more than helpers.',
    ),
    ...check('share-twice', !twice, 'Name a muscle as prime mover or as helper, not as both.'),
  ];
}

function sum(shares: readonly number[]): number {
  return shares.reduce((total, share) => total + share, 0);
}

function onlyOnce(names: readonly string[]): boolean {
  return new Set(names).size === names.length;
}
