import type { Source } from '../basis/index.ts';

/** The part of every deposit that rest within the session does not bring back. */
export const SLOW_SHARE = 0.2;

/** The rate at which the fast part comes back at rest, per second: 15 × 0.00091. */
export const REST_RECOVERY_PER_SECOND = 0.013_65;

/** Where {@link SLOW_SHARE} and {@link REST_RECOVERY_PER_SECOND} come from. */
export const capacityRateSources: readonly Source[] = [
  {
    id: 'looft-2018',
    citation:
      'Looft JM, Herkert N, Frey-Law L. J Biomech 2018;77:16-25: recovery at rest is 15 times the recovery under load.',
    doi: '10.1016/j.jbiomech.2018.06.005',
    standing: 'verified',
  },
  {
    id: 'pereira-2007-multiset',
    citation:
      'Pereira MIR, Gomes PSC, Bhambhani Y. Rev Bras Med Esporte 2007;13(5):287-291: three sets at 80 % with 1 and 3 min rest. The slow share of 0.2 was chosen on these sets.',
    doi: '10.1590/S1517-86922007000500002',
    standing: 'derived',
  },
];
