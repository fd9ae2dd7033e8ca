import { requireNumber } from '../basis/index.ts';
import type { MuscleShares } from './CapacityState.ts';

/** The shares scaled to add up to 1, muscles without a share left out. */
export function shareWeights(
  where: string,
  shares: MuscleShares,
): readonly (readonly [string, number])[] {
  const asked: (readonly [string, number])[] = [];
  let total = 0;
  for (const muscle in shares) {
    const share = shares[muscle] ?? 0;
    requireNumber(where, `shares.${muscle}`, share, 0);
    if (share === 0) continue;
    asked.push([muscle, share]);
    total += share;
  }
  if (total === 0)
    throw new RangeError(`${where}: shares must name at least one muscle with a share above 0`);
  return asked.map(([muscle, share]) => [muscle, share / total]);
}
