import { requireNumber } from '../basis/index.ts';
import { recoveryModel } from './recoveryModel.ts';

/**
 * How new a kind of work still is to the muscles: 1 the first time, near 0 when it is familiar.
 *
 * `0.3 ^ f`, where each earlier session of like work adds `0.5 ^ (days / 60)` to f. So the third
 * session within a fortnight keeps about a tenth of the extra cost of the first, and what a single
 * session taught has half faded after two months. The shape follows Damas 2016 (damage highest in
 * week 1, minimal in week 10) and the weeks to months that protection was seen to last; the two
 * constants are this project's choice.
 *
 * @param likeSessionsDaysAgo days since each earlier session, 0 or more; empty when there is none.
 * @returns 0 to 1.
 * @throws RangeError for a number of days that is negative or not finite.
 * @example
 * ```ts
 * import { unaccustomedShare } from '@windlass/core/recovery';
 * unaccustomedShare([]); // 1
 * unaccustomedShare([0]); // 0.3
 * ```
 */
export function unaccustomedShare(likeSessionsDaysAgo: readonly number[]): number {
  const { keptAfterOne, halfLifeDays } = recoveryModel.familiarity;
  let familiarity = 0;
  for (const days of likeSessionsDaysAgo) {
    requireNumber('unaccustomedShare', 'days', days, 0);
    familiarity += 0.5 ** (days / halfLifeDays);
  }
  return keptAfterOne ** familiarity;
}
