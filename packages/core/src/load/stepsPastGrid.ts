import { requireNumber } from '../basis/index.ts';
import { LARGEST_LOAD, type Load } from './Load.ts';
import type { LoadGrid } from './LoadGrid.ts';

/** How far a load is above the grid load at or below it: 0 on the grid, always less than a step. */
export function stepsPastGrid(where: string, load: Load, { step, start }: LoadGrid): number {
  requireNumber(where, 'step', step, 1, LARGEST_LOAD);
  const past = (load - (start ?? 0)) % step;
  return past < 0 ? past + step : past + 0;
}
