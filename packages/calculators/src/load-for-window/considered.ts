import type { ReachableLoad } from '@windlass/core/equipment';
import { toKg } from '@windlass/core/load';
import { oneRepMaxKg, type StrengthPosterior } from '@windlass/core/strength';

/** The loads that are worth a forecast, and how they were picked. */
export interface Considered {
  readonly loads: readonly ReachableLoad[];
  readonly total: number;
  /** Where many were left: only those with at most so many pieces to carry. */
  readonly mostPieces: number | null;
}

/** More columns than this no one reads, and no phone draws while a finger waits. */
const ENOUGH = 120;

/**
 * The loads up to just above the one-rep max, and one beyond. Of very many, those with few pieces:
 * as many pieces as leave no more than 120 loads.
 */
export function considered(loads: readonly ReachableLoad[], belief: StrengthPosterior): Considered {
  const { low, high } = oneRepMaxKg(belief, 0.95);
  const first = Math.max(0, loads.findIndex(({ load }) => toKg(load) >= low / 4) - 1);
  const beyond = loads.findIndex(({ load }) => toKg(load) > high * 1.05);
  const inRange = loads.slice(first, beyond < 0 ? loads.length : beyond + 1);
  if (inRange.length <= ENOUGH) return { loads: inRange, total: loads.length, mostPieces: null };
  const pieces = [...new Set(inRange.map(({ loading }) => loading.pieces))].sort((a, b) => b - a);
  const within = (most: number) => inRange.filter(({ loading }) => loading.pieces <= most);
  const mostPieces = pieces.find((most) => within(most).length <= ENOUGH) ?? pieces.at(-1) ?? 0;
  return { loads: within(mostPieces), total: loads.length, mostPieces };
}
