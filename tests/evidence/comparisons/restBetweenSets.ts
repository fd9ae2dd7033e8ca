import { enduranceCurves, shareForReps } from '../../../packages/core/src/strength/index.ts';
import { around, type Comparison, type Figure } from '../Comparison.ts';
import { readRows } from '../readRows.ts';
import { setsToFailure } from '../setsToFailure.ts';

/** What is left after a rest, as a share, so that the people’s endurance counts little. */
export const restBetweenSets: Comparison = {
  id: 'rest-between-sets',
  title: 'What a rest brings back',
  compares:
    'Repetitions or work of a set as a share of another set of the same people against the same share on the capacity state.',
  tables: ['multiset-decline', 'rest_interval_acute'],
  tolerance: {
    rule: '0.1',
    reason:
      'A decline over one pair of sets spread by 0.15 between 14 people where that was printed; twice the error of a mean over 14 to 28 of them is 0.06 to 0.08, and the loads and first sets of these studies are known to a repetition, 0.03 more.',
  },
  unit: 'share of the other set',
  rows: () => [...motriz(), jambassi(), ...richmond()],
};

const total = (reps: readonly number[]) => reps.reduce((sum, one) => sum + one, 0);
const study = (name: string) => {
  const row = readRows('multiset-decline').find((one) => one.text('study').startsWith(name));
  if (row === undefined) throw new Error(`multiset-decline has no study ${name}`);
  return row.text('result');
};

/** Five lifts at 70 % with 2 min: the middle of the printed range over the lifts. */
function motriz(): readonly Figure[] {
  const kinds = ['press', 'squat', 'arm-isolation', 'leg-isolation', 'leg-isolation'] as const;
  const sets = kinds.map((kind) => setsToFailure([0.7, 0.7, 0.7], 120, enduranceCurves[kind]));
  const ranges = [...study('Motriz').matchAll(/-(\d+) to -(\d+)%/g)];
  return ranges.map(([, least, most], index) => ({
    label: `five lifts, 70 %, set ${index + 2} against set ${index + 1}, 2 min`,
    predicted:
      total(sets.map((reps) => (reps[index + 1] ?? 0) / (reps[index] ?? 1))) / kinds.length,
    ...around(1 - (Number(least) + Number(most)) / 200, 0.1),
    ...(index === 1 && { miss: thirdSet }),
  }));
}

const thirdSet =
  'A fixed part of every loss stays for the session, so the third set falls less than the second did. Here it fell as much again; the knee extensions above fell by a tenth.';

/** Three sets of leg press at a load for 15: work with 1 min against 3 min. */
function jambassi(): Figure {
  const curve = enduranceCurves['leg-press'];
  const share = shareForReps(15, curve);
  const [, more] = study('Jambassi').match(/([\d.]+)% higher/) ?? [];
  const work = (rest: number) => total(setsToFailure([share, share, share], rest, curve));
  const label = 'leg press, three sets, 1 min against 3 min';
  return { label, predicted: work(60) / work(180), ...around(1 / (1 + Number(more) / 100), 0.1) };
}

/** The second set of bench press at 75 %, by rest, against that after 5 min. */
function richmond(): readonly Figure[] {
  const rows = readRows('rest_interval_acute').filter(
    (row) => row.has('value') && /work|^SD/.test(row.text('unit')),
  );
  const second = (minutes: number) =>
    setsToFailure([0.75, 0.75], 60 * minutes, enduranceCurves.press)[1] ?? 0;
  const longest = rows.at(-1);
  if (longest === undefined) throw new Error('rest_interval_acute has no work of second sets');
  return rows.slice(0, -1).map((row) => {
    const minutes = row.number('rest_min');
    return {
      label: `bench press, 75 %, second set after ${minutes} min against after 5`,
      predicted: second(minutes) / second(5),
      ...around(row.number('value') / longest.number('value'), 0.1),
      ...(misses[minutes] && { miss: misses[minutes] }),
    };
  });
}

const misses: Readonly<Record<number, string>> = {
  1: 'Studies disagree: here a minute brought back four fifths of the work, in three sets of knee extension at 80 % about half of the repetitions (the second and the third set, above), and the state follows the latter.',
};
