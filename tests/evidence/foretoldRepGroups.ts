import type { EnduranceClass } from '../../packages/core/src/anatomy/index.ts';
import { countsIn } from './countsIn.ts';
import { hatfield } from './hatfield.ts';
import type { RepGroup } from './RepGroup.ts';
import { readRows } from './readRows.ts';
import { recalled, recalledCounts } from './recalledCounts.ts';

/** Groups that no constant of the library was chosen on. */
export function foretoldRepGroups(): readonly RepGroup[] {
  return [
    hatfield('squat', 'squat'),
    kelly(),
    spreuwenberg(),
    {
      dataSet: 'reps-60-80-women-conference',
      group: 'bench press machine, women',
      people: 19,
      lift: 'press',
      aside: 'which count belongs to which load was inferred from a cut-off abstract',
      counts: countsIn('reps-60-80-women-conference'),
    },
    ...shimanoRecalled(),
  ];
}

function kelly(): RepGroup {
  const dataSet = 'kelly-2015-con-ecc-bench';
  const counts = readRows(dataSet)
    .filter((row) => row.text('mode') === 'concentric' && row.text('measure') === 'reps_at_90')
    .map((row) => ({ share: 0.9, reps: row.number('mean'), sd: row.number('sd') }));
  return { dataSet, group: 'bench press, lifting only', people: 30, lift: 'press', counts };
}

function spreuwenberg(): RepGroup {
  const dataSet = 'spreuwenberg-2006-order';
  const counts = readRows(dataSet)
    .filter((row) => row.text('order') === 'first')
    .map((row) => ({ share: 0.85, reps: row.number('mean'), sd: row.number('sd') }));
  return { dataSet, group: 'back squat, fresh', people: 9, lift: 'squat', counts };
}

function shimanoRecalled(): readonly RepGroup[] {
  const dataSet = 'shimano-2006-recalled-means';
  const lifts: Readonly<Record<string, EnduranceClass>> = {
    'back squat': 'squat',
    'bench press': 'press',
    'arm curl': 'arm-isolation',
  };
  return readRows(dataSet).map((row) => ({
    dataSet,
    group: `${row.text('lift')}, ${row.text('training')} men`,
    people: 8,
    lift: lifts[row.text('lift')] ?? 'any',
    aside: recalled,
    counts: recalledCounts(row, [60, 80, 90]),
  }));
}
