import { expect, it } from 'vitest';
import { kg, type Load } from '../../load/index.ts';
import type { FindingReport } from '../FindingStep.ts';
import { generalCurve } from '../generalCurve.ts';
import type { SetEnd } from '../PerformedSet.ts';
import { priorFor } from '../priorFor.ts';
import { strengthFrom } from '../strengthFrom.ts';
import { learnTrials } from './learnTrials.ts';

it('learns trial sets as sets of one day, from six times the first load give or take 0.8', () => {
  const told: readonly (readonly [FindingReport, SetEnd])[] = [
    ['far-too-easy', { kind: 'more', atLeast: 15 }],
    [{ repsLeft: 4 }, { kind: 'reserve', repsLeft: 4 }],
    ['form-broke', { kind: 'failure' }],
    ['failed', { kind: 'failure' }],
  ];
  const loads = [20, 10, 30, 40].map((one) => kg(one)) as [Load, Load, Load, Load];
  const tries = told.map(([report], i) => ({ load: loads[i] ?? loads[0], reps: 6 - i, report }));
  const question = {
    choices: [],
    window: { minReps: 8, maxReps: 10 },
    secondsPerRep: 4,
    curve: generalCurve,
    tries,
  };
  expect(learnTrials(question)).toEqual(
    strengthFrom({
      sets: told.map(([, end], i) => ({
        load: loads[i] ?? loads[0],
        reps: 6 - i,
        end,
        day: 0,
        secondsPerRep: 4,
      })),
      prior: priorFor(generalCurve, { kg: 120, doubt: 0.8 }),
      today: 0,
    }),
  );
});
