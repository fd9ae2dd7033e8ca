import type { EnduranceClass } from '../../packages/core/src/anatomy/index.ts';
import { countsIn } from './countsIn.ts';
import type { RepGroup } from './RepGroup.ts';

/** The sets of Hatfield 2006 at a pace of their own. */
export function hatfield(name: string, lift: EnduranceClass): RepGroup {
  const dataSet = 'hatfield-2006-very-slow';
  const counts = countsIn(
    dataSet,
    (row) => row.text('lift') === name && !row.has('seconds_per_rep'),
  );
  return { dataSet, group: `${name}, trained men`, people: 9, lift, counts };
}
