import { repsAtShare } from '../../../packages/core/src/strength/index.ts';
import type { Comparison } from '../Comparison.ts';
import { around } from '../Comparison.ts';
import { fitKappa } from '../fitKappa.ts';
import { repGroups } from '../repGroups.ts';

const ALPHA = 0.5;

/** The bend of the rep curve: every group keeps a kappa of its own, all share one form. */
export const repCurveShape: Comparison = {
  id: 'rep-curve-shape',
  title: 'The form of the rep curve',
  compares:
    'Mean repetitions to failure of each published group against the curve with one constant fitted to that group. What is tested is the bend that all groups share.',
  tables: [
    'wolfe-2024-women-powerlifts',
    'richens-cleather-2014',
    'pereira-2007-knee-extension-speed',
    'hatfield-2006-very-slow',
    'nuzzo-2024-general-table-rounded',
    'hoeger-1987-1990-reps-by-lift',
    'shimano-2006-recalled-means',
    'reps-60-80-women-conference',
  ],
  tolerance: {
    rule: 'half a repetition and 15 % of the count',
    reason:
      'Half a repetition for rounding, and 15 % of the count: twice the error of a mean over 8 to 17 people whose counts spread by a third.',
  },
  unit: 'repetitions',
  logarithmic: true,
  rows: () =>
    repGroups()
      .filter(({ counts }) => counts.length > 1)
      .flatMap(({ group, counts, aside, fitted }) => {
        const kappa = fitKappa(counts, ALPHA);
        return counts.map(({ share, reps }) => ({
          label: `${group}, ${Math.round(100 * share)} %`,
          predicted: repsAtShare(share, { kappa, alpha: ALPHA }),
          ...around(reps, 0.5 + 0.15 * reps),
          ...(aside && { aside }),
          ...(fitted && { fitted }),
        }));
      }),
};
