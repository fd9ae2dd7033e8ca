import { normalBelow } from '../../../packages/core/src/basis/index.ts';
import { evidenceModel } from '../../../packages/core/src/strength/index.ts';
import type { Comparison, Figure } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

/** How well people say what they have left. */
export const repsLeft: Comparison = {
  id: 'reps-left',
  title: 'Repetitions that people say they have left',
  compares:
    'Error of called repetitions in reserve against what the evidence model expects of such a call: people have 0.95 more than they say, give or take.',
  tables: ['rir-accuracy'],
  tolerance: {
    rule: 'two standard errors of a spread: 29 % over 24 people, 43 % over 12',
    reason: 'A standard deviation over n people has a relative standard error of 1 / √(2 (n − 1)).',
  },
  unit: 'repetitions',
  rows: () => [refalo(), ...thesis()],
};

const published = readRows('rir-accuracy');

/** Spread of a call with so many left. */
function spreadAt(left: number): number {
  const { spread, spreadPerRepLeft } = evidenceModel.reserve.value;
  return spread + spreadPerRepLeft * left;
}

/** Calls at 1 and at 3, so 2 in the mean. */
function refalo(): Figure {
  const row = published.find(
    (one) => one.text('study').startsWith('Refalo') && one.text('measure') === 'raw error',
  );
  const sd = Number(row?.text('interval_or_sd').replace('SD ', ''));
  return {
    label: 'spread of calls at 1 or 3 left, bench press',
    predicted: spreadAt(2),
    ...within(sd, 24),
    fitted: true,
  };
}

/** Mean absolute errors as `1.00 / 0.69`, called at 4 and at 1. */
function thesis(): readonly Figure[] {
  return published
    .filter((row) => row.text('measure').includes('called 4 RIR'))
    .flatMap((row) =>
      row
        .text('value')
        .split(' / ')
        .map((value, index): Figure => {
          const left = [4, 1][index] ?? 0;
          const label = `absolute error of calls at ${left} left, ${row.text('sample')}`;
          const figure = { label, predicted: meanAbsolute(left), ...within(Number(value), 12) };
          const inside = figure.predicted <= figure.allowed[1];
          return { ...figure, ...(!inside && { miss }) };
        }),
    );
}

const miss =
  'Twelve trained men under the eyes of a laboratory called better than the model expects; it keeps the bias of 0.95 that was pooled over 414 people.';

/** Mean of |error| where the error is normal around the bias. */
function meanAbsolute(left: number): number {
  const { bias } = evidenceModel.reserve.value;
  const sd = spreadAt(left);
  const spread = sd * Math.sqrt(2 / Math.PI) * Math.exp(-(bias ** 2) / (2 * sd ** 2));
  return spread + bias * (1 - 2 * normalBelow(-bias / sd));
}

function within(observed: number, people: number): Pick<Figure, 'observed' | 'allowed'> {
  const part = 2 / Math.sqrt(2 * (people - 1));
  return { observed, allowed: [observed * (1 - part), observed * (1 + part)] };
}
