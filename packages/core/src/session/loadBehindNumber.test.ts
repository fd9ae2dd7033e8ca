import { expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import { liftOf } from './liftOf.ts';
import { loadBehindNumber } from './loadBehindNumber.ts';
import type { PlanGym } from './PlanGym.ts';

const halved: PlanGym = {
  ...gym,
  equipment: gym.equipment.map((item) =>
    item.kind === 'stack' ? { ...item, pulleyRatio: 2 } : item,
  ),
};
const behind = (shown: number, exercise: string, equipment: string, where = gym, take?: number) => {
  const lift = liftOf({ ...pulldown, exercise, equipment }, where, client.bodyWeight);
  if (lift.kind !== 'lift') throw new Error(lift.message);
  const [first, ...others] = lift.loads.loads;
  const loads = [first, ...(take === undefined ? others : others.slice(0, take - 1))] as const;
  return toKg(loadBehindNumber({ ...lift.loads, loads }, kg(shown)));
};

it.each([
  ['a number of the stack', 40, 'cable-pulldown', 'pulldown', gym, 40],
  ['one that it cannot show', 41, 'cable-pulldown', 'pulldown', gym, 41],
  ['half of it behind a pulley', 40, 'cable-pulldown', 'pulldown', halved, 20],
  ['half of one that it cannot show', 41, 'cable-pulldown', 'pulldown', halved, 20.5],
  // 78 kg of the body
  ['the body and what hangs on it', 5, 'chin-up', 'station', gym, 83],
] as const)('is %s', (_, shown, exercise, equipment, where, load) => {
  expect(behind(shown, exercise, equipment, where)).toBeCloseTo(load, 9);
});

it('goes up as the number does where there is only one load', () => {
  // the lightest is 7.5 kg on the stack
  expect(behind(10, 'cable-pulldown', 'pulldown', gym, 1)).toBe(10);
});
