import { strengthDrift } from '../../../packages/core/src/strength/index.ts';
import type { Comparison } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

const WEEKS = 18;

/** Whether the belief can follow what training was seen to do. */
export const strengthGained: Comparison = {
  id: 'strength-gained',
  title: 'Change that the belief can follow',
  compares:
    'The largest gain of a trained group in the rows against what the belief about a one-rep max can follow from session to session over as many weeks.',
  tables: ['braith-1993-training-shift'],
  tolerance: {
    rule: 'at most three standard deviations',
    reason:
      'A change of more than three standard deviations would be held for a slip of the log; less than one would mean that the belief forgets for nothing.',
  },
  unit: 'standard deviations',
  rows: () => {
    const gain = readRows('braith-1993-training-shift').find(
      (row) => row.text('measure') === '1RM_gain',
    );
    const sd = Math.sqrt(strengthDrift.maxPerDay * 7 * WEEKS);
    const change = Math.log(1 + (gain?.number('after_18_weeks') ?? 0) / 100);
    return [
      {
        label: 'knee extension, 31.7 % in 18 weeks',
        predicted: change / sd,
        observed: undefined,
        allowed: [1, 3],
        fitted: true,
      },
    ];
  },
};
