import type { RepCount } from './RepGroup.ts';
import type { PublishedRow } from './readRows.ts';

/** Why counts that were not read in their paper are shown and not counted. */
export const recalled = 'recalled from the literature, not read there';

/** Counts of a row with a column a load; no spread was recalled. */
export function recalledCounts(
  row: PublishedRow,
  percents: readonly number[],
): readonly RepCount[] {
  return percents
    .filter((percent) => row.has(`reps_at_${percent}`))
    .map((percent) => ({
      share: percent / 100,
      reps: row.number(`reps_at_${percent}`),
      sd: undefined,
    }));
}
