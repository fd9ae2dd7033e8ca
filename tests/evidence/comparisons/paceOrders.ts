import {
  enduranceCurves,
  kappaAtTempo,
  repsAtShare,
} from '../../../packages/core/src/strength/index.ts';
import type { Comparison, Order } from '../Comparison.ts';
import { falls, listed } from '../falls.ts';
import { readRows } from '../readRows.ts';

/** Directions in which the pace moves counts and set times. */
export const paceOrders: Comparison = {
  id: 'pace-orders',
  title: 'Orders of pace',
  compares: 'Which way repetitions and set times go as repetitions slow.',
  tables: [
    'sakamoto-sinclair-2006-2012',
    'wilk-2018-tempo-volume',
    'pryor-2011-bench-80-tempo',
    'lachance-hortobagyi-1994',
  ],
  tolerance: {
    rule: 'the same order',
    reason: 'Only the direction was published or could be read.',
  },
  rows: () => [...sakamoto(), ...wilk(), pryor(), ...laChance()],
};

/** Repetitions of a bench press at a pace. */
function reps(share: number, secondsPerRep: number): number {
  const { kappa, alpha } = enduranceCurves.press;
  return repsAtShare(share, { kappa: kappaAtTempo(kappa, secondsPerRep).kappa.likely, alpha });
}

function sakamoto(): readonly Order[] {
  const paces = readRows('sakamoto-sinclair-2006-2012')
    .filter((row) => row.has('seconds_per_rep'))
    .map((row) => row.number('seconds_per_rep'))
    .sort((a, b) => a - b);
  const loads = [0.4, 0.5, 0.6, 0.7, 0.8];
  const counts = loads.map((share) => paces.map((seconds) => reps(share, seconds)));
  const lost = counts.map((byPace) => (byPace[0] ?? 0) - (byPace.at(-1) ?? 0));
  return [
    {
      label: `bench press at ${paces.join(', ')} s (Sakamoto & Sinclair)`,
      found: 'fewer at a slower pace, at every load',
      given: `at 60 %: ${listed(counts[2] ?? [])}`,
      holds: counts.every(falls),
    },
    {
      label: 'what the pace costs, by load (Sakamoto & Sinclair)',
      found: 'more at light loads',
      given: `40 to 80 %: ${listed(lost)} repetitions fewer`,
      holds: falls(lost),
    },
  ];
}

/** 2/0/2/0, 5/0/3/0 and 6/0/4/0: 4, 8 and 10 s; 70 % as usual in that laboratory. */
function wilk(): readonly Order[] {
  const paces = [4, 8, 10];
  const counts = paces.map((seconds) => reps(0.7, seconds));
  const times = paces.map((seconds, index) => seconds * (counts[index] ?? 0));
  const given = (values: readonly number[]) => `4, 8, 10 s: ${listed(values)}`;
  return [
    {
      label: 'repetitions at 4 s against 8 and 10 s (Wilk 2018)',
      found: 'more',
      given: given(counts),
      holds: falls(counts.slice(0, 2)) && (counts[0] ?? 0) > (counts[2] ?? 0),
    },
    {
      label: 'time of the set at 8 and 10 s against 4 s (Wilk 2018)',
      found: 'longer',
      given: `${given(times)} s`,
      holds: falls(times.slice(0, 2).toReversed()) && (times[2] ?? 0) > (times[0] ?? 0),
    },
  ];
}

/** Lowered in 1 or in 4 s, lifted as fast as it goes (about 1 s). */
function pryor(): Order {
  const counts = [2, 5].map((seconds) => reps(0.8, seconds));
  return {
    label: 'bench press at 80 %, lowered in 1 against 4 s (Pryor 2011)',
    found: 'more repetitions',
    given: listed(counts),
    holds: falls(counts),
  };
}

/** At a pace of their own people did more repetitions in less time than at 6 s. */
function laChance(): readonly Order[] {
  return readRows('lachance-hortobagyi-1994').map((row) => {
    const more = 1 + row.number('reps_and_work_more_percent') / 100;
    const longer = 1 - row.number('time_less_percent') / 100;
    const slow = 10;
    const quick =
      1 +
      ((slow - 1) / kappaAtTempo(1, 6).kappa.likely) *
        kappaAtTempo(1, (6 * longer) / more).kappa.likely;
    const time = (quick * longer) / more / slow;
    return {
      label: `${row.text('exercise')} at one’s own pace against 6 s (LaChance & Hortobágyi)`,
      found: 'the set is shorter',
      given: `${(100 * time).toFixed(0)} % of the time`,
      holds: time < 1,
    };
  });
}
