import { addLoads, type Load, loadFromValue } from '../load/index.ts';
import type { Barbell } from './Equipment.ts';

/** The bar with its two collars. */
export function emptyBar({ bar, collar }: Barbell): Load {
  const each = collar === undefined ? (0 as Load) : loadFromValue(collar);
  return addLoads(loadFromValue(bar), each, each);
}
