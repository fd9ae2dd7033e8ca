import type { RepCount } from './RepGroup.ts';
import { type PublishedRow, readRows } from './readRows.ts';

/** Counts of a table with a share, a mean and a spread a row. */
export function countsIn(
  dataSet: string,
  passes: (row: PublishedRow) => boolean = () => true,
): readonly RepCount[] {
  return readRows(dataSet)
    .filter(passes)
    .map((row) => ({
      share: row.number('percent_1rm') / 100,
      reps: row.number('mean'),
      sd: row.number('sd'),
    }));
}
