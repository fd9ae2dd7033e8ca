import type { Band } from '../../basis/index.ts';

/** The band of a count: whole numbers that hold it with at least the level's probability. */
export function countBand(chances: readonly number[], level: number): Band {
  const at = (share: number) => {
    let below = 0;
    for (let reps = 0; reps < chances.length; reps += 1) {
      below += chances[reps] as number;
      if (below >= share - 1e-9) return reps;
    }
    return chances.length - 1;
  };
  return { low: at((1 - level) / 2), likely: at(0.5), high: at((1 + level) / 2), level };
}
