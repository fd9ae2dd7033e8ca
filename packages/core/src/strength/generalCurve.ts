import type { SourcedRepCurve } from './RepCurve.ts';

/** The curve for a lift and a lifter nothing is known about, at 3 seconds a repetition. */
export const generalCurve: SourcedRepCurve = {
  kappa: 38.5,
  alpha: 0.5,
  kappaLogSd: 0.35,
  sources: [
    {
      id: 'nuzzo-2024-general-table-rounded',
      citation:
        'Nuzzo JL, Pinto MD, Nosaka K, Steele J. Maximal number of repetitions at percentages of the one repetition maximum. Sports Med 2024;54:303-321 (whole repetitions, as recalled)',
      doi: '10.1007/s40279-023-01937-7',
      standing: 'recalled',
    },
  ],
};
