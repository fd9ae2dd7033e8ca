import { expect, it } from 'vitest';
import { type Barbell, waysToLoad } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { changeFinder } from './changeFinder.ts';
import { climb } from './climb.ts';
import { rungsOf } from './rungs.ts';

it('leaves out a load that nothing lighter leads to', () => {
  const bar: Barbell = { kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } };
  const plates = [{ weight: { value: 10, unit: 'kg' }, pieces: 8 }] as const;
  const answer = waysToLoad(bar, { plates }, {}, 0);
  if (answer.kind === 'none') throw new Error(answer.message);
  const at = (...loads: readonly number[]) =>
    answer.ways.filter(({ load }) => loads.includes(toKg(load)));
  const problem = {
    ...{ targets: [kg(60), kg(45)], ways: at(40, 60, 80), workWays: at(100), work: kg(100) },
    ...{ pieceCost: 0, growthCost: 0 },
  };
  // 40 is nearer to the second target than 80, but the first step is 60 already
  const rungs = [rungsOf(at(60)), rungsOf(at(40, 80))];
  const { steps } = climb(problem, rungs, changeFinder(answer.ways, 0));
  expect(steps.map(({ load }) => toKg(load))).toEqual([60, 80]);
});
