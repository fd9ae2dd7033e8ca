import type { Band } from '../../basis/index.ts';

/** The band of a count: whole numbers that hold it with at least the level's probability. */
export function countBand(chances: readonly number[], level: number): Band {
  const at = (share: number) => {
    let below = 0;
    return chances.findIndex((chance) => {
      below += chance;
      return below >= share - 1e-9;
    });
  };
  return { low: at((1 - level) / 2), likely: at(0.5), high: at((1 + level) / 2), level };
}
