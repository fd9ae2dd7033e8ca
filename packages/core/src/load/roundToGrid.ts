import type { Load } from './Load.ts';
import type { LoadGrid } from './LoadGrid.ts';
import { stepsPastGrid } from './stepsPastGrid.ts';

/** Which grid load to take for a load between two of them. */
export type GridRounding = 'nearest' | 'down' | 'up';

/**
 * The grid load for a load, by integer arithmetic.
 *
 * `down` is the lighter neighbour, `up` the heavier, `nearest` the closer one; exactly half way
 * it is the lighter one, every time. For assistance (negative loads) lighter means more
 * assistance. A load on the grid comes back unchanged under every rule.
 *
 * @throws RangeError for a step that is not more than 0.
 * @example
 * ```ts
 * import { kg, roundToGrid, scaleLoad, toKg } from '@windlass/core/load';
 * const exact = scaleLoad(kg(125), 65, 100);
 * toKg(exact); // 81.25
 * toKg(roundToGrid(exact, { step: kg(2.5) }, 'nearest')); // 80
 * toKg(roundToGrid(exact, { step: kg(2.5) }, 'up')); // 82.5
 * ```
 */
export function roundToGrid(load: Load, grid: LoadGrid, rounding: GridRounding): Load {
  const past = stepsPastGrid('roundToGrid', load, grid);
  const goDown =
    past === 0 || rounding === 'down' || (rounding === 'nearest' && 2 * past <= grid.step);
  return (goDown ? load - past : load - past + grid.step) as Load;
}
