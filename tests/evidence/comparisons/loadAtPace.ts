import {
  generalCurve,
  kappaAtTempo,
  shareForReps,
} from '../../../packages/core/src/strength/index.ts';
import type { Comparison } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

/** The load for the same count at two paces. */
export const loadAtPace: Comparison = {
  id: 'load-at-pace',
  title: 'The load for eight slow repetitions',
  compares:
    'The share of the one-rep max that eight repetitions were done with, quick and slow, against the pace law.',
  tables: ['slow-protocol-loads'],
  tolerance: { rule: 'the printed range', reason: 'The study gives its loads as ranges.' },
  unit: 'percent of the one-rep max',
  rows: () => {
    const row = readRows('slow-protocol-loads').find((one) =>
      one.text('slow_tempo_con_ecc_s').includes('no relax'),
    );
    return (
      [
        [6, 'slow_load_percent_1rm', '3 s up and 3 s down without relaxing'],
        [2, 'comparison_load_percent_1rm', '1 s up and 1 s down with 1 s of rest'],
      ] as const
    ).map(([seconds, column, label]) => {
      const [low = 0, high = 0] = (row?.text(column).split('-') ?? []).map(Number);
      const kappa = kappaAtTempo(generalCurve.kappa, seconds).kappa.likely;
      return {
        label,
        predicted: 100 * shareForReps(8, { kappa, alpha: generalCurve.alpha }),
        observed: (low + high) / 2,
        allowed: [low, high],
        aside: 'tension without relaxing is mixed into the pace, and chokes the blood flow besides',
      };
    });
  },
};
