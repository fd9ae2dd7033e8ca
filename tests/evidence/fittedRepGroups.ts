import type { EnduranceClass } from '../../packages/core/src/anatomy/index.ts';
import { countsIn } from './countsIn.ts';
import { hatfield } from './hatfield.ts';
import type { RepGroup } from './RepGroup.ts';
import { readRows } from './readRows.ts';
import { recalled, recalledCounts } from './recalledCounts.ts';

/** The groups that the starting curves were made from. */
export function fittedRepGroups(): readonly RepGroup[] {
  return [
    nuzzo(),
    wolfe('back squat', 'squat'),
    wolfe('bench press', 'press'),
    wolfe('deadlift', 'hinge'),
    richens('weightlifters'),
    richens('endurance runners'),
    {
      dataSet: 'cooke-2019-squat-70',
      group: 'back squat, well trained',
      people: 58,
      lift: 'squat',
      counts: countsIn('cooke-2019-squat-70'),
    },
    {
      dataSet: 'shimano-2006-verified-cell',
      group: 'back squat, trained men',
      people: 8,
      lift: 'squat',
      counts: countsIn('shimano-2006-verified-cell'),
    },
    pereira(),
    hatfield('shoulder press', 'overhead-press'),
    ...hoeger(),
  ];
}

function nuzzo(): RepGroup {
  const dataSet = 'nuzzo-2024-general-table-rounded';
  const counts = readRows(dataSet).map((row) => ({
    share: row.number('percent_1rm') / 100,
    reps: row.number('mean_reps_approx'),
    sd: undefined,
  }));
  return { dataSet, group: 'all lifts but two', lift: 'any', aside: recalled, counts };
}

function wolfe(name: string, lift: EnduranceClass): RepGroup {
  const dataSet = 'wolfe-2024-women-powerlifts';
  const counts = countsIn(dataSet, (row) => row.text('lift') === name);
  return { dataSet, group: `${name}, trained women`, people: 17, lift, counts };
}

function richens(name: string): RepGroup {
  const dataSet = 'richens-cleather-2014';
  const counts = countsIn(dataSet, (row) => row.text('group') === name);
  return { dataSet, group: `leg press, ${name}`, people: 8, lift: 'leg-press', counts };
}

/** The quicker of two paces, about 2.5 seconds a repetition. */
function pereira(): RepGroup {
  const dataSet = 'pereira-2007-knee-extension-speed';
  const counts = countsIn(dataSet, (row) => row.number('speed_deg_per_s') === 80);
  return { dataSet, group: 'knee extension, quick', people: 9, lift: 'leg-isolation', counts };
}

function hoeger(): readonly RepGroup[] {
  const dataSet = 'hoeger-1987-1990-reps-by-lift';
  return readRows(dataSet).map((row) => ({
    dataSet,
    group: `${row.text('lift')}, ${row.text('training')} ${row.text('sex')}s`,
    lift: hoegerLifts[row.text('lift')] ?? 'any',
    aside: recalled,
    counts: recalledCounts(row, [40, 60, 80]),
  }));
}

const hoegerLifts: Readonly<Record<string, EnduranceClass>> = {
  'leg press': 'leg-press',
  'lat pulldown': 'pull',
  'bench press': 'press',
  'knee extension': 'leg-isolation',
  'sit-up': 'trunk',
  'arm curl': 'arm-isolation',
  'leg curl': 'leg-isolation',
};
