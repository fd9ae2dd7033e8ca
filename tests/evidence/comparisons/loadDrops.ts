import {
  capacityFor,
  depositReps,
  freshCapacity,
  repCost,
  restCapacity,
} from '../../../packages/core/src/capacity/index.ts';
import { enduranceCurves, shareForReps } from '../../../packages/core/src/strength/index.ts';
import type { Comparison } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

const kinds: Readonly<Record<string, keyof typeof enduranceCurves>> = {
  'back squat': 'squat',
  'lat pulldown': 'pull',
  'bench press': 'press',
  'leg curl': 'leg-isolation',
  'leg extension': 'leg-isolation',
};

/** How much to take off to repeat a count after a short rest. */
export const loadDrops: Comparison = {
  id: 'load-drops',
  title: 'What to take off for the next set',
  compares: 'Load taken off a set to keep ten repetitions against the same on the capacity state.',
  tables: ['load-drop-to-hold-reps'],
  tolerance: {
    rule: '5 percentage points',
    reason: 'The studies chose between reductions of 5, 10 and 15 %.',
  },
  unit: 'percent of the load',
  rows: () =>
    readRows('load-drop-to-hold-reps').map((row) => {
      const range = (row.text('reduction_percent').match(/\d+/g) ?? []).map(Number);
      const [low = 0, high = low] = range;
      return {
        label: `${row.text('exercise')} (${row.text('study')})`,
        predicted: takenOff(kinds[row.text('exercise')] ?? 'press'),
        observed: (low + high) / 2,
        allowed: [low - 5, high + 5],
        aside: 'the rest is “short” and no more; one minute was taken',
      };
    }),
};

function takenOff(kind: keyof typeof enduranceCurves): number {
  const curve = enduranceCurves[kind];
  const shares = { muscle: 1 };
  const usual = shareForReps(10, curve);
  const tired = depositReps(freshCapacity(), shares, 10, repCost({ intensity: usual, ...curve }));
  const capacity = capacityFor(restCapacity(tired, 60), shares);
  return 100 * (1 - shareForReps(10, curve, capacity) / usual);
}
