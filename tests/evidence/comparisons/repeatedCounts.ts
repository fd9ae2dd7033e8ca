import { evidenceModel, repsAtShare } from '../../../packages/core/src/strength/index.ts';
import type { Comparison } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

/** How far the same person's count is off from one day to another. */
export const repeatedCounts: Comparison = {
  id: 'repeated-counts',
  title: 'The same set on another day',
  compares:
    'Standard error of measurement of repetitions to failure on the bench press, test against retest, against the repeat error of the evidence model.',
  tables: ['mitter-2022-reliability'],
  tolerance: {
    rule: 'the study’s own 90 % interval',
    reason: 'The error of measurement is itself known no better than this interval.',
  },
  unit: 'repetitions',
  rows: () =>
    readRows('mitter-2022-reliability').map((row) => {
      const { base, perRep } = evidenceModel.repeat.value;
      return {
        label: `bench press, ${row.number('percent_1rm')} %`,
        predicted: base + perRep * repsAtShare(row.number('percent_1rm') / 100),
        observed: row.number('sem_reps'),
        allowed: [row.number('sem_hdi_low'), row.number('sem_hdi_high')],
        fitted: true,
      };
    }),
};
