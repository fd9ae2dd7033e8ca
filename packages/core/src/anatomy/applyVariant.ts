import type { Exercise, Variant } from './Exercise.ts';

/**
 * The exercise as it is with one set-up: positions, support, hands, shares, stations and way back
 * already changed, so that nobody else has to look at variants.
 *
 * @param exercise any exercise.
 * @param variant one of its set-ups.
 * @returns a new exercise with the same id and no further variants.
 * @example
 * ```ts
 * import { applyVariant, findExercise } from '@windlass/core/anatomy';
 * const found = findExercise('leg-extension');
 * const exercise = found.kind === 'found' ? found.exercise : undefined;
 * const half = exercise?.variants.find((variant) => variant.id === 'bent-half');
 * exercise && half && applyVariant(exercise, half).positions; // []
 * ```
 */
export function applyVariant(exercise: Exercise, variant: Variant): Exercise {
  const kept = exercise.positions.filter((position) => !variant.removes?.includes(position));
  return {
    ...exercise,
    positions: [...kept, ...(variant.adds ?? [])],
    stations: [...new Set([...exercise.stations, ...(variant.stations ?? [])])],
    ...(variant.support !== undefined && { support: variant.support }),
    ...(variant.hands !== undefined && { hands: variant.hands }),
    ...(variant.wayBack !== undefined && { wayBack: variant.wayBack }),
    ...(variant.movedShare !== undefined && { movedShare: variant.movedShare }),
    ...(variant.direct && { direct: variant.direct, indirect: variant.indirect ?? {} }),
    variants: [],
  };
}
