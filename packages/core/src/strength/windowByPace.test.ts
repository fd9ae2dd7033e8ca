import { expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { forecastReps } from './forecastReps.ts';
import { generalCurve } from './generalCurve.ts';
import { loadForWindow } from './loadForWindow.ts';
import { priorFor } from './priorFor.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';
import { strengthFrom } from './strengthFrom.ts';
import { windowByPace } from './windowByPace.ts';

it('answers for every pace what asking for it alone does, fresh or not, at any level', () => {
  const posterior = strengthFrom({
    sets: [{ load: kg(50), reps: 9, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
    prior: priorFor(generalCurve),
    today: 0,
    cells: { columns: 24, rows: 12 },
  }) as StrengthPosterior;
  const keep = { load: kg(45) };
  const choices = [40, 45, 50].map((load) => ({ load: kg(load) }));
  const question = { posterior, choices, window: { minReps: 6, maxReps: 9 } };
  for (const { capacity, level } of [
    { capacity: 1, level: 0.8 },
    { capacity: 0.8, level: 0.5 },
  ]) {
    const more = capacity === 1 ? {} : { capacity, level };
    const told = windowByPace({ ...question, ...more }, keep, [3, 6]);
    expect(told).toEqual(
      [3, 6].map((secondsPerRep) => {
        const conditions = { load: keep.load, secondsPerRep, capacity };
        const { reps, setSeconds } = forecastReps(posterior, conditions, level);
        const answer = loadForWindow({ ...question, secondsPerRep, capacity, level });
        return { secondsPerRep, answer, kept: { reps, setSeconds } };
      }),
    );
  }
  expect(windowByPace(question, keep, [])).toEqual([]);
});
