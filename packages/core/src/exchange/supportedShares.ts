import type { Source } from '../basis/index.ts';

/** What a push-up stands on beside the hands. */
export type PushUpForm = 'feet-on-floor' | 'knees-on-floor';

/** Share of body weight on the hands, held still: mean over people, and how far they spread. */
export interface SupportedShare {
  readonly mean: number;
  readonly sd: number;
}

/**
 * Push-ups held at the top and at the bottom. Means are those of the two studies' groups, taken
 * together: (67.0 + 65.1 + 69.16) / 3 and so on; the spread is the larger of the two published
 * standard deviations.
 */
export const supportedShares: Readonly<
  Record<PushUpForm, { readonly top: SupportedShare; readonly bottom: SupportedShare }>
> = {
  'feet-on-floor': { top: { mean: 0.671, sd: 0.038 }, bottom: { mean: 0.733, sd: 0.036 } },
  'knees-on-floor': { top: { mean: 0.525, sd: 0.037 }, bottom: { mean: 0.595, sd: 0.045 } },
};

export const supportedShareSources: readonly Source[] = [
  {
    id: 'push-up-2014',
    citation:
      'Int J Exerc Sci 2014;7(2):161-168: 37 men and women, held still. Feet on the floor, top 67.0 (3.8) and 65.1 (3.1) %, bottom 74.6 (3.6) and 70.3 (3.1) %; knees on the floor, top 52.5 (3.7) and 51.5 (3.1) %, bottom 60.1 (4.5) and 56.6 (2.7) %.',
    standing: 'verified',
  },
  {
    id: 'suprak-2011',
    citation:
      'Suprak DN, Dawes J, Stephenson MD. J Strength Cond Res 2011;25(2):497-503: 69.16 and 75.04 % with the feet, 53.56 and 61.80 % with the knees on the floor.',
    standing: 'recalled',
  },
];
