import type { Load } from './Load.ts';

/** The exact sum of loads; 0 of none. Kilogram and pound loads mix freely. */
export function addLoads(...loads: readonly Load[]): Load {
  return loads.reduce((sum: number, load) => sum + load, 0) as Load;
}
