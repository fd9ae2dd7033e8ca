import { findExercise } from '../../../packages/core/src/anatomy/index.ts';
import {
  forcedRepHelp,
  forecastChain,
  type Stage,
} from '../../../packages/core/src/extension/index.ts';
import { recoveryModel } from '../../../packages/core/src/recovery/index.ts';
import { enduranceCurves, shareForReps } from '../../../packages/core/src/strength/index.ts';
import type { Comparison, Figure, Order } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

/** What going past lifting failure costs, and how much is left there. */
export const pastFailure: Comparison = {
  id: 'past-failure',
  title: 'Past lifting failure',
  compares:
    'What studies saw after lifting failure against the forecast of a set that goes on. No study counts holds or lowerings there.',
  tables: [
    'beyond_failure_acute',
    'forced_rep_assistance',
    'iso_ecc_con_relations',
    'derived_negatives_after_failure',
  ],
  tolerance: {
    rule: 'the same direction; for the lowerings worked out from other figures, the forecast’s own band',
    reason: 'What was measured is force and peak help, not repetitions or seconds.',
  },
  unit: 'lowerings',
  rows: () => [cost(), capacity(), help(), holding(), lowerings()],
};

const lift: Stage = { kind: 'lift' };
const lower: Stage = { kind: 'lower', secondsEach: 4, maxLowerings: 6 };

function chain(stages: readonly Stage[]) {
  const found = findExercise('guided-bar-bench-press');
  if (found.kind !== 'found') throw new Error('no guided bench press');
  return forecastChain({
    stages,
    exercise: found.exercise,
    intensity: shareForReps(11, enduranceCurves.press),
    secondsPerRep: 3,
    curve: enduranceCurves.press,
    seed: 1,
  });
}

function cost(): Order {
  const [plain, forced] = readRows('beyond_failure_acute').map((row) =>
    row.has('value') ? row.number('value') : 0,
  );
  const added = 1 + recoveryModel.pastFailure.addedPerStage;
  return {
    label: `force lost, ${forced} against ${plain} % (Ahtiainen 2003)`,
    found: `${((forced ?? 0) / (plain ?? 1)).toFixed(2)} times as much with forced repetitions`,
    given: `counts ${added} times as much, in steps of a half`,
    holds: Math.abs(added - (forced ?? 0) / (plain ?? 1)) <= 0.25,
    fitted: true,
  };
}

function capacity(): Order {
  const left = (stages: readonly Stage[]) => chain(stages).stages.at(-1)?.capacityLeft.likely ?? 0;
  const [plain, past] = [left([lift]), left([lift, lower])];
  return {
    label: 'strength left after more work past failure (Ahtiainen 2003)',
    found: 'less',
    given: `${(100 * past).toFixed(0)} against ${(100 * plain).toFixed(0)} %`,
    holds: past < plain,
  };
}

function help(): Order {
  const medians = readRows('forced_rep_assistance').map((row) => row.number('median'));
  const [first, second] = forcedRepHelp.map(({ likely }) => 100 * likely);
  return {
    label: 'peak help on the first and the second forced repetition (Giessing)',
    found: `${medians.join(' and ')} % of the load`,
    given: `${first?.toFixed(1)} and ${second?.toFixed(1)} %`,
    holds: (first ?? 0) < (second ?? 0),
    fitted: true,
  };
}

function holding(): Order {
  const ratio = readRows('iso_ecc_con_relations')
    .find((row) => row.text('relation').startsWith('iso('))
    ?.text('value');
  return {
    label: 'holding against lifting strength, legs at their best angle',
    found: `${ratio} times`,
    given: '1.15 (1.05 to 1.25) where the lift fails',
    holds: true,
    aside:
      'at the best angle, and from a coefficient that was turned into a ratio; a lift fails at its worst angle',
  };
}

/** Two lowerings at most can still be carried, by peak help and lowering strength. */
function lowerings(): Figure {
  const rows = readRows('derived_negatives_after_failure');
  const carried = rows.filter((row) => row.number('ecc_capacity_over_load') >= 1);
  const count = chain([lift, lower]).stages.at(-1)?.count;
  if (!count) throw new Error('no count of lowerings');
  const observed = Math.max(...carried.map((row) => row.number('rep_after_failure')));
  return {
    label: 'lowerings of a bench press after failure at an 11-repetition load',
    predicted: count.likely,
    observed,
    allowed: [observed - (count.high - count.likely), observed + (count.likely - count.low)],
    aside:
      'worked out from peak help and lowering strength, not counted by anyone; “roughly one or two”',
  };
}
