import { enduranceCurves } from '../../../packages/core/src/strength/index.ts';
import type { Comparison, Order } from '../Comparison.ts';
import { forecastAfterMax } from '../measuredMax.ts';

/** The one-rep max when its single repetition is slow. */
export const slowSingles: Comparison = {
  id: 'slow-singles',
  title: 'A single slow repetition',
  compares:
    'The order of one-rep maxes measured at different paces against the load that has an even chance of one repetition at that pace.',
  tables: ['wilk-2020-tempo-1rm-men', 'wilk-2020-tempo-1rm-women', 'headley-2011-tempo-1rm'],
  tolerance: {
    rule: 'the same order; equal where no difference was found',
    reason:
      'No figures could be read. Two loads count as equal when they are nearer than 2.5 %, the usual step between loads and half of the day-to-day variation of a one-rep max.',
  },
  rows: () => [
    compared('men, lowered at will against 2 s', 1, 2, 'no difference'),
    compared('men, 2 against 5 s', 2, 5, 'less at 5 s'),
    compared('men, 5 against 8 s', 5, 8, 'less at 8 s'),
    compared('men, 8 against 10 s', 8, 10, 'no difference'),
    compared('women, 2 against 4 s', 2, 4, 'less at 4 s'),
    compared('women, 2 against 6 s', 2, 6, 'less at 6 s'),
    compared('2 s up, 2 against 4 s down (Headley 2011)', 3, 5, 'less at 4 s'),
  ],
};

/** Lowering seconds of both; lifting adds one second. */
function compared(label: string, quick: number, slow: number, found: string): Order {
  const [first, second] = [quick, slow].map((lowering) => evenChance(lowering + 1)) as [
    number,
    number,
  ];
  const equal = Math.abs(second / first - 1) < 0.025;
  const holds = found === 'no difference' ? equal : !equal && second < first;
  return {
    label,
    found,
    given: `${(100 * first).toFixed(1)} and ${(100 * second).toFixed(1)} % of the one-rep max at 3 s`,
    holds,
    ...(!holds && { miss }),
  };
}

/** The share of the one-rep max that one repetition at a pace succeeds with in one case of two. */
function evenChance(secondsPerRep: number): number {
  let low = 0.5;
  let high = 1.5;
  while (high - low > 1e-4) {
    const share = (low + high) / 2;
    const { chances } = forecastAfterMax(enduranceCurves.press, share, secondsPerRep);
    if (1 - (chances[0] ?? 0) > 0.5) low = share;
    else high = share;
  }
  return low;
}

const miss =
  'One repetition is 100 % at every pace in the library. By how much a slow single is weaker could not be read, so the forecast grows wider and not lower.';
