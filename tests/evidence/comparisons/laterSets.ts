import { enduranceCurves, shareForReps } from '../../../packages/core/src/strength/index.ts';
import { around, type Comparison, type Figure } from '../Comparison.ts';
import { readRows } from '../readRows.ts';
import { curveThrough, setsToFailure } from '../setsToFailure.ts';

/** The second and third set to failure with one load. */
export const laterSets: Comparison = {
  id: 'later-sets',
  title: 'The second and the third set',
  compares:
    'Repetitions of later sets to failure against the capacity state, started from the first sets of the same people.',
  tables: ['pereira-2007-multiset', 'kraemer-1997-10rm-rest'],
  tolerance: {
    rule: 'one standard deviation between the people of the study; 15 % where none was printed',
    reason:
      'Nine people: their mean is known to a third of this spread, and so is the first set that the price of a repetition is taken from.',
  },
  unit: 'repetitions',
  rows: () => [...pereira(), ...kraemer()],
};

/** The first sets of three conditions are of the same people and load, so they are pooled. */
function pereira(): readonly Figure[] {
  const rows = readRows('pereira-2007-multiset');
  const first = rows.reduce((sum, row) => sum + row.number('set1_mean'), 0) / rows.length;
  return rows
    .filter((row) => /^\d+ min$/.test(row.text('rest')))
    .flatMap((row) => {
      const rest = 60 * Number.parseInt(row.text('rest'), 10);
      const reps = setsToFailure([0.8, 0.8, 0.8], rest, curveThrough(0.8, first));
      return [2, 3].map((set) => ({
        label: `knee extension at 80 %, set ${set} after ${row.text('rest')}`,
        predicted: reps[set - 1] ?? 0,
        ...around(row.number(`set${set}_mean`), row.number(`set${set}_sd`)),
        fitted: true as const,
      }));
    });
}

function kraemer(): readonly Figure[] {
  const curve = enduranceCurves.press;
  const share = shareForReps(10, curve);
  return readRows('kraemer-1997-10rm-rest').flatMap((row) => {
    const minutes = row.number('rest_min');
    const reps = setsToFailure([share, share, share], 60 * minutes, curve);
    return [2, 3].map((set) => ({
      label: `ten-repetition load, set ${set} after ${minutes} min`,
      predicted: reps[set - 1] ?? 0,
      ...around(row.number(`set${set}`), 0.15 * row.number(`set${set}`)),
      aside: 'recalled, and sets of exactly ten are more likely stopped than failed',
    }));
  });
}
