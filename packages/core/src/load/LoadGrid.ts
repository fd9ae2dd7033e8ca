import type { Load } from './Load.ts';

/**
 * Loads at equal distances: start, start ± step, start ± 2 steps and so on, without end.
 *
 * `start` is any load of the grid, such as the bar; 0 when left out. It is no lower bound: which
 * loads a gym can make is answered by `@windlass/core/equipment`.
 */
export interface LoadGrid {
  /** The distance between neighbours, more than 0. */
  readonly step: Load;
  readonly start?: Load;
}
