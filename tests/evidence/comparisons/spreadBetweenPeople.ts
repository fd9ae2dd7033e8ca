import { enduranceCurves, generalCurve } from '../../../packages/core/src/strength/index.ts';
import type { Comparison, Figure } from '../Comparison.ts';
import { fitKappa } from '../fitKappa.ts';
import { forecastAfterMax } from '../measuredMax.ts';
import { readRows } from '../readRows.ts';
import { repGroups } from '../repGroups.ts';

/** How far people differ at one share of the one-rep max. */
export const spreadBetweenPeople: Comparison = {
  id: 'spread-between-people',
  title: 'How far people differ',
  compares:
    'Standard deviation of repetitions between the people of a study, as a share of their mean, against the forecast for a stranger whose one-rep max was measured three days before.',
  tables: [
    'wolfe-2024-women-powerlifts',
    'richens-cleather-2014',
    'cooke-2019-squat-70',
    'shimano-2006-verified-cell',
    'pereira-2007-knee-extension-speed',
    'kelly-2015-con-ecc-bench',
    'spreuwenberg-2006-order',
    'ijspp-2020-mnr-cv',
    'reps-60-80-women-conference',
  ],
  tolerance: {
    rule: 'no narrower than the group by two standard errors, and no wider than the group, two standard errors and the spread between groups together',
    reason:
      'A standard deviation over n people has a relative standard error of 1 / √(2 (n − 1)): 9 % over 58 people, 27 % over 8. The people of one study are more alike than strangers: groups on one kind of lift differ besides, by what their fitted constants spread.',
  },
  unit: 'share of the mean',
  logarithmic: true,
  rows: () => [
    // Hatfield’s printed spread may be an error of the mean, and nothing was recalled of spreads
    ...repGroups()
      .filter(({ people, dataSet }) => people !== undefined && !/hatfield|recalled/.test(dataSet))
      .flatMap(({ group, lift, people = 0, counts, aside }) =>
        counts.map(({ share, reps, sd = 0 }) => {
          const curve = lift === 'any' ? generalCurve : enduranceCurves[lift];
          const label = `${group}, ${Math.round(100 * share)} %`;
          return row(label, forecastAfterMax(curve, share), sd / reps, people, aside);
        }),
      ),
    ...guidedBench(),
  ],
};

/** Least at 50 % and most at 90 %, because the study saw it rise with the load. */
function guidedBench(): readonly Figure[] {
  const [published] = readRows('ijspp-2020-mnr-cv');
  if (published === undefined) throw new Error('ijspp-2020-mnr-cv is empty');
  return (
    [
      [0.5, 'cv_min'],
      [0.9, 'cv_max'],
    ] as const
  ).map(([share, column]) =>
    row(
      `guided bench press, ${100 * share} %`,
      forecastAfterMax(enduranceCurves.press, share),
      published.number(column) / 100,
      published.number('n'),
    ),
  );
}

function row(
  label: string,
  { mean, sd }: { readonly mean: number; readonly sd: number },
  observed: number,
  people: number,
  aside?: string,
): Figure {
  const part = 2 / Math.sqrt(2 * (people - 1));
  return {
    label,
    predicted: sd / mean,
    observed,
    allowed: [observed * (1 - part), Math.hypot(observed * (1 + part), betweenGroups())],
    ...(aside && { aside }),
    ...(misses[label] && { miss: misses[label] }),
  };
}

/**
 * Standard deviation of ln kappa between published groups on one kind of lift, pooled over the
 * lifts. Each lift’s own mean takes one degree of freedom, so a lift with one group tells nothing.
 */
function betweenGroups(): number {
  const fitted = repGroups().filter((group) => group.fitted && group.lift !== 'any');
  let squares = 0;
  let freedom = 0;
  for (const groups of Map.groupBy(fitted, ({ lift }) => lift).values()) {
    const lnKappas = groups.map(({ counts }) => Math.log(fitKappa(counts, 0.5)));
    const mean = lnKappas.reduce((sum, one) => sum + one, 0) / lnKappas.length;
    squares += lnKappas.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    freedom += lnKappas.length - 1;
  }
  return Math.sqrt(squares / freedom);
}

const lifters =
  'Eight weightlifters were far more alike than people are on this lift; the forecast cannot know that it is for one of them and is wider.';

const misses: Readonly<Record<string, string>> = {
  'leg press, weightlifters, 70 %': lifters,
  'leg press, weightlifters, 80 %': lifters,
  'leg press, weightlifters, 90 %': lifters,
  'knee extension, quick, 80 %':
    'Nine people on one leg, counted by a metronome, were more alike than the forecast, which expects the counting of a gym.',
  'guided bench press, 50 %':
    'Loads were set from each person’s own bar speed, which takes out most of what people differ by at light loads; with loads set from a one-rep max others spread by 0.23 to 0.32.',
};
