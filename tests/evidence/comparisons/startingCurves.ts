import {
  enduranceCurves,
  generalCurve,
  repsAtShare,
} from '../../../packages/core/src/strength/index.ts';
import { around, type Comparison, type Figure } from '../Comparison.ts';
import { readRows } from '../readRows.ts';
import { repGroups } from '../repGroups.ts';

/** What the library says of a stranger on a lift, before any set. */
export const startingCurves: Comparison = {
  id: 'starting-curves',
  title: 'Repetitions of a stranger',
  compares:
    'Mean repetitions to failure of each published group against the curve that the library starts from on that kind of lift, nothing fitted to the group.',
  tables: [
    'wolfe-2024-women-powerlifts',
    'richens-cleather-2014',
    'cooke-2019-squat-70',
    'shimano-2006-verified-cell',
    'pereira-2007-knee-extension-speed',
    'hatfield-2006-very-slow',
    'kelly-2015-con-ecc-bench',
    'spreuwenberg-2006-order',
    'braith-1993-training-shift',
    'nuzzo-2024-general-table-rounded',
    'reps-60-80-women-conference',
  ],
  tolerance: {
    rule: 'two standard deviations between the people of the study',
    reason:
      'A starting value is for one unknown person, so it must not lie outside nearly everyone in the group. A count given as a range of 7 to 10 repetitions allows that range; where no spread was printed, two thirds of the count, twice the spread of the studies that printed one.',
  },
  note: (rows) => {
    const near = rows.filter(
      ({ predicted, observed = 0, allowed: [low, high] }) =>
        Math.abs(predicted - observed) <= (high - low) / 4,
    );
    return `${near.length} of ${rows.length} lie within half of that, one standard deviation.`;
  },
  unit: 'repetitions',
  logarithmic: true,
  rows: () => [
    ...repGroups()
      .filter(({ dataSet }) => !/recalled|hoeger/.test(dataSet))
      .flatMap(({ group, lift, counts, aside, fitted }) =>
        counts.map(({ share, reps, sd }): Figure => {
          const label = `${group}, ${Math.round(100 * share)} %`;
          return {
            label,
            predicted: repsAtShare(share, lift === 'any' ? generalCurve : enduranceCurves[lift]),
            ...around(reps, 2 * (sd ?? reps / 3)),
            ...(aside && { aside }),
            ...(fitted && { fitted }),
            ...explained(label),
          };
        }),
      ),
    ...braith(),
  ],
};

/** The load of 7 to 10 repetitions before and after 18 weeks of training. */
function braith(): readonly Figure[] {
  const [row] = readRows('braith-1993-training-shift');
  return ['before', 'after_18_weeks'].map((when) => {
    const percent = row?.number(when) ?? 0;
    const label = `knee extension, ${when === 'before' ? 'untrained' : 'after 18 weeks'}, ${percent} %`;
    return {
      label,
      predicted: repsAtShare(percent / 100, enduranceCurves['leg-isolation']),
      observed: 8.5,
      allowed: [7, 10],
      ...explained(label),
    };
  });
}

const lifters =
  'Weightlifters and endurance runners differ more than twofold on this lift; one curve for both lies between them, and the first logged set to failure moves it.';

const misses: Readonly<Record<string, string>> = {
  'leg press, weightlifters, 70 %': lifters,
  'leg press, weightlifters, 80 %': lifters,
  'knee extension, untrained, 68.4 %':
    'The same people later did as many with 79 %, which is inside: training moved the curve by more than one starting value can cover.',
};

const explained = (label: string) => (misses[label] ? { miss: misses[label] } : {});
