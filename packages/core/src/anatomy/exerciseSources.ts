import type { Source } from '../basis/index.ts';
import { muscleSource } from './muscles.ts';

/** What the exercise data rests on, and what in it is a convention. */
export const exerciseSources: readonly Source[] = [
  muscleSource,
  {
    id: 'set-counting',
    citation:
      'Pelland JC et al. SportRxiv 2024 (67 studies, 2058 people): prime movers counted as direct, helpers as indirect sets of a half. The half is a statistical convention, not a measured activation.',
    standing: 'verified',
  },
  {
    id: 'exercise-roles',
    citation:
      'Which muscles are prime movers and which helpers: inferred from the actions of muscles, not measured. Triceps in presses and elbow flexors in pulls stand as helpers.',
    standing: 'derived',
  },
  {
    id: 'exercise-conventions',
    citation:
      'Shares, moment arms of holds, ways back, body-weight shares other than the push-up’s, and what stands in for a station: choices of this project from the geometry of each movement.',
    standing: 'convention',
  },
  {
    id: 'hollander-2007',
    citation:
      'Hollander DB et al. J Strength Cond Res 2007;21(1):34-40: men on machines lowered 1.27 to 1.49 times what they lifted.',
    doi: '10.1519/00124278-200702000-00007',
    standing: 'verified',
  },
  {
    id: 'kelly-2015',
    citation:
      'Kelly SB et al. J Strength Cond Res 2015;29(4):1027-1032: bench press of 30 men, 116.0 kg lowered against 93.6 kg lifted, 1.24.',
    doi: '10.1519/JSC.0000000000000713',
    standing: 'verified',
  },
  {
    id: 'shibata-2025',
    citation:
      'Shibata K et al. J Strength Cond Res 2025;39(5):515-522: trained men with free weights, 1.24 (squat), 1.26 (bench press), 1.32 (curl).',
    doi: '10.1519/JSC.0000000000005046',
    standing: 'verified',
  },
  {
    id: 'nuzzo-2023',
    citation:
      'Nuzzo JL, Pinto MD, Nosaka K, Steele J. Sports Med 2023;53(6):1125-1136: lowering against lifting strength 1.41 (1.38 to 1.44) over 335 studies.',
    doi: '10.1007/s40279-023-01851-y',
    standing: 'verified',
  },
];
