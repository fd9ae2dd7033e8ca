import { requireNumber } from '../basis/index.ts';
import { type Load, toKg } from '../load/index.ts';
import type { EquationLift, OneRepMaxEquation } from './OneRepMaxEquation.ts';
import { oneRepMaxEquations } from './oneRepMaxEquations.ts';

/** What one equation says, and whether it was made for such a set. */
export interface EquationAnswer {
  readonly equation: OneRepMaxEquation;
  /** None where the equation breaks down: not a number, or below the load itself. */
  readonly oneRepMaxKg: number | undefined;
  readonly place: 'inside' | 'outside-its-range' | 'other-lift' | 'breaks-down';
}

/** How far the equations part on one set. */
export interface EquationSpread {
  readonly lowestKg: number;
  readonly highestKg: number;
  /** Highest over lowest, less 1. */
  readonly share: number;
  /** How many equations it is over. */
  readonly equations: number;
}

/** The equations side by side, or the single that needs none. */
export type EquationComparison =
  /** One repetition to failure is the one-rep max, whatever an equation says. */
  | { readonly kind: 'single'; readonly oneRepMaxKg: number }
  | {
      readonly kind: 'several';
      readonly answers: readonly EquationAnswer[];
      /** Over the equations made for such a set; none when there is none. */
      readonly inside: EquationSpread | undefined;
      /** Over every equation for any lift that gives an answer, inside its range or not. */
      readonly all: EquationSpread;
      /** `above-10-reps`: past ten repetitions the equations part and none should be relied on. */
      readonly warnings: readonly 'above-10-reps'[];
    };

/**
 * What the published equations say about one set to failure, side by side.
 *
 * @param load above 0, the whole load that moves.
 * @param reps repetitions to failure, whole, 1 to 100.
 * @param lift adds the equations made for that lift; without it they are marked `other-lift`.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { compareEquations } from '@windlass/core/strength';
 * compareEquations(kg(100), 1); // { kind: 'single', oneRepMaxKg: 100 }
 * const five = compareEquations(kg(100), 5);
 * five.kind === 'several' && five.inside?.equations; // 11
 * ```
 */
export function compareEquations(
  load: Load,
  reps: number,
  lift?: EquationLift,
): EquationComparison {
  requireNumber('compareEquations', 'load', load, 1);
  requireNumber('compareEquations', 'reps', reps, 1, 100);
  const loadKg = toKg(load);
  if (reps === 1) return { kind: 'single', oneRepMaxKg: loadKg };
  const answers = oneRepMaxEquations.map((equation) => answer(equation, loadKg, reps, lift));
  const general = answers.filter(({ equation }) => equation.lift === undefined);
  const inside = answers.filter(({ place }) => place === 'inside');
  return {
    kind: 'several',
    answers,
    inside: inside.length === 0 ? undefined : spreadOf(inside),
    all: spreadOf(general),
    warnings: reps > 10 ? ['above-10-reps'] : [],
  };
}

function answer(
  equation: OneRepMaxEquation,
  loadKg: number,
  reps: number,
  lift: EquationLift | undefined,
): EquationAnswer {
  const oneRepMaxKg = equation.oneRepMaxKg(loadKg, reps);
  if (!(Number.isFinite(oneRepMaxKg) && oneRepMaxKg >= loadKg)) {
    return { equation, oneRepMaxKg: undefined, place: 'breaks-down' };
  }
  if (equation.lift !== undefined && equation.lift !== lift) {
    return { equation, oneRepMaxKg, place: 'other-lift' };
  }
  const { validReps = [1, 100], validShares = [0, 1] } = equation;
  const share = loadKg / oneRepMaxKg;
  const holds = between(reps, validReps) && between(share, validShares);
  return { equation, oneRepMaxKg, place: holds ? 'inside' : 'outside-its-range' };
}

function between(value: number, [low, high]: readonly [number, number]): boolean {
  return value >= low && value <= high;
}

function spreadOf(answers: readonly EquationAnswer[]): EquationSpread {
  const values = answers.flatMap(({ oneRepMaxKg }) => oneRepMaxKg ?? []);
  const lowestKg = Math.min(...values);
  const highestKg = Math.max(...values);
  return { lowestKg, highestKg, share: highestKg / lowestKg - 1, equations: values.length };
}
