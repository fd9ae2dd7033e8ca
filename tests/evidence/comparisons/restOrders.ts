import { enduranceCurves, shareForReps } from '../../../packages/core/src/strength/index.ts';
import type { Comparison, Order } from '../Comparison.ts';
import { falls, listed } from '../falls.ts';
import { setsToFailure } from '../setsToFailure.ts';

/** Directions in which the rest between sets moves what is done in all. */
export const restOrders: Comparison = {
  id: 'rest-orders',
  title: 'Orders of rests',
  compares: 'Repetitions over all sets by the rest between them.',
  tables: ['multiset-decline', 'rest_interval_acute'],
  tolerance: {
    rule: 'the same order',
    reason: 'Only the direction was published, or figures for another measure.',
  },
  rows: () => [
    ordered('leg press, ten-repetition load, five sets (Senna 2011)', [1, 3, 5], 'leg-press', 10),
    ordered(
      'leg extension, ten-repetition load, five sets (Senna 2011)',
      [1, 3, 5],
      'leg-isolation',
      10,
    ),
    ordered('bench press, ten-repetition load, five sets (Senna 2011)', [1, 3], 'press', 10),
    ordered('bench press, three-repetition load, five sets (Scudese 2015)', [1, 2], 'press', 3),
    ordered('bench press at 80 %, five sets (Willardson & Burkett 2006)', [1, 2, 3], 'press', 10),
    ordered('bench press at 50 %, five sets (Willardson & Burkett 2006)', [1, 2, 3], 'press', 31),
    ordered('bench press at 60 %, five sets (Tibana 2013)', [1.5, 3], 'press', 23),
    ...decline(),
  ],
};

type Kind = keyof typeof enduranceCurves;

const total = (reps: readonly number[]) => reps.reduce((sum, one) => sum + one, 0);

function sets(kind: Kind, reps: number, minutes: number, count = 5): readonly number[] {
  const share = shareForReps(reps, enduranceCurves[kind]);
  return setsToFailure(Array(count).fill(share), 60 * minutes, enduranceCurves[kind]);
}

function ordered(label: string, minutes: readonly number[], kind: Kind, reps: number): Order {
  const totals = minutes.map((rest) => total(sets(kind, reps, rest)));
  return {
    label,
    found: `more with ${minutes.toReversed().join(' than with ')} min`,
    given: `${minutes.join(', ')} min: ${listed(totals)}`,
    holds: falls(totals.toReversed()),
  };
}

/** No rest brought the second set back to the first. */
function decline(): readonly Order[] {
  return [1, 3, 5].map((minutes) => {
    const [first = 0, second = 0] = sets('press', 12, minutes, 2);
    return {
      label: `bench press at 75 %, second set after ${minutes} min (Richmond & Godard 2004)`,
      found: 'fewer than in the first',
      given: listed([first, second]),
      holds: second < first,
    };
  });
}
