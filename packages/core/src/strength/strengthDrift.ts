import type { Source } from '../basis/index.ts';

const braith: Source = {
  id: 'braith-1993-training-shift',
  citation:
    'Braith RW, Graves JE, Leggett SH, Pollock ML. Effect of training on the relationship between maximal and submaximal strength. Med Sci Sports Exerc 1993;25(1):132-138',
  doi: '10.1249/00005768-199301000-00018',
  standing: 'verified',
};

/** How strength wanders between sessions, and falls when nothing is trained. */
export const strengthDrift = {
  /** Variance a day of ln(one-rep max): 18 weeks give an SD of 0.16, and saw gains of 0.275. */
  maxPerDay: 2e-4,
  /** Variance a day of ln(kappa): 18 weeks give an SD of 0.22, and saw a change of 0.49. */
  kappaPerDay: 4e-4,
  /** Days after which kappa is no more in doubt than it already is. */
  kappaMostDays: 180,
  /** Loss of ln(one-rep max) in a layoff: `most * (1 - exp(-(days - grace) / scaleDays))`. */
  layoff: { graceDays: 14, most: 0.35, scaleDays: 100, doubt: 0.5 },
  sources: [
    braith,
    {
      id: 'bosquet-2013',
      citation:
        'Bosquet L, Berryman N, Dupuy O, et al. Effect of training cessation on muscular performance: a meta-analysis. Scand J Med Sci Sports 2013;23(3):e140-149 (loss grows with the days; no figure a day)',
      doi: '10.1111/sms.12047',
      standing: 'verified',
    },
    {
      id: 'windlass-choice',
      citation:
        'Little lost in two weeks, about a tenth in six, a fifth in fourteen, a quarter in seven months: coaching reports, so the doubt is half the loss',
      standing: 'convention',
    },
  ] satisfies readonly Source[],
} as const;
