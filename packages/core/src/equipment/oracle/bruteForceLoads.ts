import { loadFromValue } from '../../load/index.ts';
import type { Barbell, PlateStock } from '../Equipment.ts';

/** The best that exhaustive search finds for one load. */
export interface BestLoading {
  readonly load: number;
  readonly pieces: number;
  readonly room: number;
}

/** Every mirrored loading of a bar, tried one by one: the fewest pieces and then the least room. */
export function bruteForceLoads(
  bar: Barbell,
  stock: readonly PlateStock[],
): ReadonlyMap<number, BestLoading> {
  const best = new Map<number, BestLoading>();
  const collar = bar.collar ? loadFromValue(bar.collar) : 0;
  const limit = Math.round((bar.sleeveMm ?? 1e6) * 1000);
  const visit = (index: number, load: number, pieces: number, room: number): void => {
    const kind = stock[index];
    if (kind === undefined) {
      const known = best.get(load);
      const better =
        known === undefined ||
        pieces < known.pieces ||
        (pieces === known.pieces && room < known.room);
      if (room <= limit && better) best.set(load, { load, pieces, room });
      return;
    }
    for (let pairs = 0; 2 * pairs <= kind.pieces; pairs += 1) {
      visit(
        index + 1,
        load + 2 * pairs * loadFromValue(kind.weight),
        pieces + 2 * pairs,
        room + pairs * Math.round((kind.thicknessMm ?? 0) * 1000),
      );
    }
  };
  visit(0, loadFromValue(bar.bar) + 2 * collar, 0, 0);
  return best;
}
