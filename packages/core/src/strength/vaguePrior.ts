import type { Source } from '../basis/index.ts';

/** What a first load says about the one-rep max when nothing else is known: very little. */
export const vaguePrior = {
  /** People left alone choose about this share of their one-rep max. */
  share: 0.53,
  /** Standard deviation of ln(one-rep max): from a fifth to five times as much. */
  sd: 0.8,
  sources: [
    {
      id: 'self-selected-loads',
      citation:
        'Steele J, Malleron T, Har-Nir I, et al. Are trainees lifting heavy enough? Sports Med 2022;52:2909-2923',
      doi: '10.1007/s40279-022-01717-9',
      standing: 'verified',
    },
  ] satisfies readonly Source[],
} as const;
