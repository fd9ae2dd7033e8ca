import type { Source } from '../basis/index.ts';

/** The pace law `kappa * (secondsPerRep / 3)^-p` and where its figures come from. */
export const tempoLaw = {
  referenceSeconds: 3,
  exponent: 0.55,
  /** Smallest and largest exponent seen in six comparisons of paces. */
  observedExponents: [0.4, 0.794],
  /** Seconds under load per repetition for which the law was seen to hold. */
  rangeSeconds: [2, 10],
  sources: [
    {
      id: 'pereira-2007-knee-extension-speed',
      citation:
        'Pereira MIR, Gomes PSC, Bhambhani Y. Maximum number of repetitions in isotonic exercises. Rev Bras Med Esporte 2007;13(5):287-291',
      doi: '10.1590/S1517-86922007000500002',
      standing: 'verified',
    },
    {
      id: 'lachance-hortobagyi-1994',
      citation:
        'LaChance PF, Hortobagyi T. Influence of cadence on muscular performance during push-up and pull-up exercise. J Strength Cond Res 1994;8(2):76-79',
      doi: '10.1519/00124278-199405000-00003',
      standing: 'verified',
    },
    {
      id: 'tempo-elasticity-derived',
      citation: 'Exponent of repetitions to seconds per repetition, computed from the rows above',
      standing: 'derived',
    },
  ],
} as const satisfies {
  readonly referenceSeconds: number;
  readonly exponent: number;
  readonly observedExponents: readonly [number, number];
  readonly rangeSeconds: readonly [number, number];
  readonly sources: readonly Source[];
};
