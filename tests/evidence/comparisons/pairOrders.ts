import type { MuscleId } from '../../../packages/core/src/anatomy/index.ts';
import { findExercise } from '../../../packages/core/src/anatomy/index.ts';
import { kg } from '../../../packages/core/src/load/index.ts';
import { type PairForecast, planPair } from '../../../packages/core/src/pairing/index.ts';
import { around, type Comparison, type Figure, type Order } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

/** A compound lift right after an isolation lift for the same muscle. */
export const pairOrders: Comparison = {
  id: 'pair-orders',
  title: 'The second lift of a pair',
  compares:
    'Repetitions of a compound lift with its usual load after an isolation set to failure, against without.',
  tables: ['pre-exhaustion-findings', 'augustsson-2003-reps'],
  tolerance: {
    rule: 'the same direction; for the one recalled count, the forecast’s own band',
    reason: 'No study printed how many repetitions the second lift loses.',
  },
  unit: 'repetitions',
  rows: () => {
    const legs = pair('leg-extension', 'leg-press', ['vasti', 'rectus-femoris']);
    const chest = pair('machine-fly', 'machine-chest-press', ['chest']);
    return [
      fewer('leg press after leg extension, both at a 10-repetition load (Augustsson 2003)', legs),
      fewer('chest press after fly, both at a 10-repetition load (Gentil 2007)', chest),
      recalled(legs),
    ];
  },
};

function fewer(label: string, { repsAtUsualLoad: { low, likely, high } }: PairForecast): Order {
  return {
    label,
    found: 'fewer repetitions',
    given: `${likely} (${low} to ${high}) of 10`,
    holds: high < 10,
  };
}

function recalled({ repsAtUsualLoad: { low, likely, high } }: PairForecast): Figure {
  const [without, after] = readRows('augustsson-2003-reps').map((row) => row.number('mean'));
  return {
    label: `leg press after leg extension, of ${without}`,
    ...around(after ?? 0, 0),
    predicted: likely,
    allowed: [(after ?? 0) - (high - likely), (after ?? 0) + (likely - low)],
    aside: 'recalled with low confidence; only the direction was read',
  };
}

/** Ten repetitions to failure, 10 s, and a set that was ten repetitions without it; 4 s each. */
function pair(isolation: string, compound: string, target: readonly MuscleId[]): PairForecast {
  const plan = planPair({
    target,
    isolation: { exercise: named(isolation), reps: 10, repsLeft: 0, secondsPerRep: 4 },
    compound: { exercise: named(compound), usual: { load: kg(100), reps: 10 }, secondsPerRep: 4 },
    transitionSeconds: 10,
  });
  if (plan.kind === 'refused') throw new Error(plan.refusals.map(({ why }) => why).join(' '));
  return plan;
}

function named(id: string) {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`no exercise ${id}`);
  return found.exercise;
}
