import { kg } from '../../../packages/core/src/load/index.ts';
import {
  compareEquations,
  enduranceCurves,
  generalCurve,
  oneRepMaxKg,
  priorFor,
  repsAtShare,
  strengthFrom,
} from '../../../packages/core/src/strength/index.ts';
import type { Comparison, Order } from '../Comparison.ts';
import { falls, listed } from '../falls.ts';
import { forecastAfterMax } from '../measuredMax.ts';

const shares = [0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

/** Orders that studies printed without figures, or with figures of another measure. */
export const countOrders: Comparison = {
  id: 'count-orders',
  title: 'Orders of counts and of doubts',
  compares: 'What rises and falls with the load and with the repetitions of a set.',
  tables: ['nuzzo-2024-scope', 'one-rm-validation-errors', 'ijspp-2020-mnr-cv'],
  tolerance: {
    rule: 'the same order',
    reason: 'Only the direction was published, or the figures measure something else.',
  },
  rows: () => [...load(), ...lifts(), ...doubts(), equations()],
};

function load(): readonly Order[] {
  const reps = shares.map((share) => repsAtShare(share));
  const forecasts = shares.map((share) => forecastAfterMax(generalCurve, share));
  const parts = [0.5, 0.9].map((share) => {
    const { mean, sd } = forecastAfterMax(enduranceCurves.press, share);
    return sd / mean;
  });
  return [
    {
      label: 'mean count against load (Nuzzo 2024)',
      found: 'falls',
      given: `40 to 90 %: ${listed(reps)}`,
      holds: falls(reps),
    },
    {
      label: 'spread between people against load (Nuzzo 2024)',
      found: 'falls, in repetitions',
      given: `40 to 90 %: ${listed(forecasts.map(({ sd }) => sd))}`,
      holds: falls(forecasts.map(({ sd }) => sd)),
    },
    {
      label: 'spread between people as a share of the count (guided bench press)',
      found: 'rises with the load',
      given: `50 and 90 %: ${listed(parts, 2)}`,
      holds: falls(parts.toReversed()),
    },
  ];
}

function lifts(): readonly Order[] {
  const more = shares.map(
    (share) =>
      repsAtShare(share, enduranceCurves['leg-press']) - repsAtShare(share, enduranceCurves.press),
  );
  return [
    {
      label: 'leg press against bench press (Nuzzo 2024)',
      found: 'more repetitions at every load',
      given: `40 to 90 %: ${listed(more)} more`,
      holds: more.every((one) => one > 0),
    },
  ];
}

/** How wide the one-rep max is known after one set. */
function width(reps: number): number {
  const belief = strengthFrom({
    sets: [{ load: kg(100), reps, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
    prior: priorFor(generalCurve),
    today: 0,
  });
  if (belief.kind !== 'posterior') throw new Error(belief.kind);
  const { low, high } = oneRepMaxKg(belief);
  return Math.log(high / low);
}

function doubts(): readonly Order[] {
  const brechue = [10, 8, 4].map(width);
  const reynolds = [20, 10, 5].map(width);
  return [
    {
      label: 'one-rep max from 3 to 5 against more than 6 repetitions (Brechue & Mayhew 2009)',
      found: 'known better from fewer',
      given: `10, 8, 4 repetitions: ln width ${listed(brechue, 2)}`,
      holds: falls(brechue),
    },
    {
      label: 'one-rep max from 5, 10 and 20 repetitions (Reynolds 2006)',
      found: 'known best from 5 and worst from 20',
      given: `20, 10, 5 repetitions: ln width ${listed(reynolds, 2)}`,
      holds: falls(reynolds),
    },
  ];
}

function equations(): Order {
  const spreads = [20, 15, 10].map((reps) => {
    const answer = compareEquations(kg(100), reps);
    return answer.kind === 'several' ? answer.all.share : 0;
  });
  return {
    label: 'equations past 10 repetitions (Mayhew 1995)',
    found: 'part, some over and some under',
    given: `20, 15, 10 repetitions: apart by ${listed(spreads.map((one) => 100 * one))} %`,
    holds: falls(spreads),
  };
}
