import { enduranceCurves, shareForReps } from '../../../packages/core/src/strength/index.ts';
import { around, type Comparison, type Figure } from '../Comparison.ts';
import { readRows } from '../readRows.ts';
import { setsToFailure } from '../setsToFailure.ts';

/** Repetitions of all sets together, nothing taken from the people of the study. */
export const setTotals: Comparison = {
  id: 'set-totals',
  title: 'All sets together',
  compares:
    'Repetitions over three or five sets to failure against the starting curve and the capacity state, nothing fitted to the study.',
  tables: ['multiset-decline'],
  tolerance: {
    rule: 'one standard deviation between the people of the study; a third where none was printed',
    reason:
      'As for a stranger’s first set: the forecast should lie with the middle two thirds of the people. Where no spread was printed, a third: the spread between people in the studies that printed one.',
  },
  unit: 'repetitions',
  rows: () => [...motriz(), ...olderWomen(), ...speretta(), ...silva()],
};

const total = (reps: readonly number[]) => reps.reduce((sum, one) => sum + one, 0);
const three = (share: number) => [share, share, share];
const study = (name: string) => {
  const row = readRows('multiset-decline').find((one) => one.text('study').startsWith(name));
  if (row === undefined) throw new Error(`multiset-decline has no study ${name}`);
  return row.text('result');
};
/** Numbers of a result, in the order printed. */
const numbers = (text: string) => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

/** 33 in the lifts over several joints, 24 to 28 in those over one; 70 %, 2 min. */
function motriz(): readonly Figure[] {
  const totals = study('Motriz').split('3-set totals')[1] ?? '';
  const [several = 0, low = 0, high = 0] = numbers(totals.replace(/\(.*?\)/g, ''));
  const mean = (...kinds: readonly (keyof typeof enduranceCurves)[]) =>
    total(kinds.map((kind) => total(setsToFailure(three(0.7), 120, enduranceCurves[kind])))) /
    kinds.length;
  const one = mean('arm-isolation', 'leg-isolation', 'leg-isolation');
  return [
    {
      label: 'bench press and squat, 70 %, three sets, 2 min',
      predicted: mean('press', 'squat'),
      ...around(several, several / 3),
    },
    {
      label: 'curl, leg extension and leg curl, 70 %, three sets, 2 min',
      predicted: one,
      observed: (low + high) / 2,
      allowed: [low - low / 3, high + high / 3],
    },
  ];
}

/** Three curls to failure with a load for 10 to 12 repetitions; 90 and 180 s. */
function olderWomen(): readonly Figure[] {
  const curve = enduranceCurves['arm-isolation'];
  const share = shareForReps(11, curve);
  const [short = 0, shortSd = 0, long = 0, longSd = 0] = numbers(study('Rev Bras Med Esporte'));
  return [
    [90, short, shortSd],
    [180, long, longSd],
  ].map(([rest = 0, observed = 0, sd = 0]) => ({
    label: `curl at an 11-repetition load, three sets, ${rest} s`,
    predicted: total(setsToFailure(three(share), rest, curve)),
    ...around(observed, sd),
  }));
}

function speretta(): readonly Figure[] {
  const loads = [0.7, 0.75, 0.75, 0.8, 0.85];
  const [one = 0, oneSd = 0, two = 0, twoSd = 0] = numbers(study('Speretta'));
  return [
    [1, one, oneSd],
    [2, two, twoSd],
  ].map(([minutes = 0, observed = 0, sd = 0]) => ({
    label: `bench press, five sets from 70 to 85 %, ${minutes} min`,
    predicted: total(setsToFailure(loads, 60 * minutes, enduranceCurves.press)),
    ...around(observed, sd),
  }));
}

function silva(): readonly Figure[] {
  const [light = 0, lightSd = 0, heavy = 0, heavySd = 0] = numbers(study('Silva'));
  return [
    [0.5, light, lightSd],
    [0.7, heavy, heavySd],
  ].map(([share = 0, observed = 0, sd = 0]) => ({
    label: `bench press, ${100 * share} %, three sets, 1 min`,
    predicted: total(setsToFailure(three(share), 60, enduranceCurves.press)),
    ...around(observed, sd),
    aside: 'that the printed counts are sums over the sets is presumed',
  }));
}
