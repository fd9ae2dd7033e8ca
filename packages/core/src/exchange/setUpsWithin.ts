import { applyVariant, type Exercise, type Variant } from '../anatomy/index.ts';
import type { ExchangeReason } from './Exchange.ts';

/** An exercise that passes every filter, and the set-ups that it took. */
export interface SetUpExercise {
  readonly exercise: Exercise;
  readonly setUps: readonly Variant[];
}

/**
 * The ways to set an exercise up so that nothing speaks against it, fewest changes first: as it
 * is, with one set-up, or with two that change different things.
 */
export function setUpsWithin(
  exercise: Exercise,
  against: (candidate: Exercise) => readonly ExchangeReason[],
): readonly SetUpExercise[] {
  const single = exercise.variants.map((variant) => [variant]);
  const double = exercise.variants.flatMap((first, at) =>
    exercise.variants
      .slice(at + 1)
      .filter((second) => second.changes !== first.changes)
      .map((second) => [first, second]),
  );
  const ways = [[], ...single, ...double].map((setUps) => ({
    exercise: setUps.reduce(withVariant, exercise),
    setUps,
  }));
  const within = ways.filter((way) => against(way.exercise).length === 0);
  const fewest = Math.min(...within.map(({ setUps }) => setUps.length));
  return within.filter(({ setUps }) => setUps.length === fewest);
}

function withVariant(exercise: Exercise, variant: Variant): Exercise {
  return { ...applyVariant(exercise, variant), variants: exercise.variants };
}
