import type { Axis } from './Axis.ts';

/** Probabilities of the values of one axis of a grid, summed over the other. */
export function marginOf(
  chances: ArrayLike<number>,
  columns: number,
  side: 'columns' | 'rows',
): Float64Array {
  const rows = chances.length / columns;
  const margin = new Float64Array(side === 'columns' ? columns : rows);
  for (let cell = 0; cell < chances.length; cell += 1) {
    const index = side === 'columns' ? cell % columns : Math.floor(cell / columns);
    margin[index] = (margin[index] as number) + (chances[cell] as number);
  }
  return margin;
}

/**
 * The value below which a share of the probability lies; each cell's probability is spread evenly
 * over its width.
 */
export function quantileAlong(margin: ArrayLike<number>, axis: Axis, share: number): number {
  let below = 0;
  for (let index = 0; index < margin.length; index += 1) {
    const chance = margin[index] as number;
    if (below + chance >= share && chance > 0) {
      return axis.from + axis.step * (index - 0.5 + (share - below) / chance);
    }
    below += chance;
  }
  return axis.from + axis.step * (margin.length - 0.5);
}
