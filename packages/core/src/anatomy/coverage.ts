import type { Exercise, LoadKind } from './Exercise.ts';
import { type Movement, movements } from './Movement.ts';

/** One movement, and the exercises for it by what loads them. */
export interface CoverageRow {
  readonly movement: Movement;
  /** Ids in list order; a kind that loads nothing here is left out. */
  readonly byLoad: Readonly<Partial<Record<LoadKind, readonly string[]>>>;
}

/**
 * Which movements can be done with which kind of load: one row for every movement, also those
 * that no exercise of the list serves.
 *
 * @example
 * ```ts
 * import { coverage, exercises } from '@windlass/core/anatomy';
 * const dips = coverage(exercises).find((row) => row.movement === 'dip');
 * dips?.byLoad.stack; // ['machine-dip']
 * ```
 */
export function coverage(list: readonly Exercise[]): readonly CoverageRow[] {
  return movements.map((movement) => {
    const byLoad: Partial<Record<LoadKind, readonly string[]>> = {};
    for (const exercise of list.filter((candidate) => candidate.movement === movement)) {
      for (const load of exercise.loads) byLoad[load] = [...(byLoad[load] ?? []), exercise.id];
    }
    return { movement, byLoad };
  });
}
