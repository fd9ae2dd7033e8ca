import { expect, it } from 'vitest';
import { rangeErrorOf } from '../basis/rangeErrorOf.testing.ts';
import { capacityFor } from './capacityFor.ts';
import { capacityTrace } from './capacityTrace.ts';
import { depositReps } from './depositReps.ts';
import { depositSustained } from './depositSustained.ts';
import { exerciseFatigue } from './exerciseFatigue.ts';
import { repCost } from './repCost.ts';
import { repsOverSets } from './repsOverSets.ts';
import { repsUntil } from './repsUntil.ts';
import { restCapacity } from './restCapacity.ts';
import { sustainedFatigue } from './sustainedFatigue.ts';
import { sustainedSeconds } from './sustainedSeconds.ts';

const shares = { biceps: 1 };
const wrong = { biceps: -1 };
const rep = { intensity: 0.8, kappa: 30, alpha: 1 };
const hold = { targetLoad: 0.5, fatigued: 0 };
const sets = { intensity: 0.8, costPerRep: 0.03, restsSeconds: [], shares };

it.each([
  [
    'capacityTrace: line failure',
    () => capacityTrace({ shares, steps: [], lines: [{ id: 'failure', capacity: Number.NaN }] }),
  ],
  ['depositReps: reps', () => depositReps({}, shares, -1, 0.03)],
  ['depositReps: costPerRep', () => depositReps({}, shares, 1, -1)],
  ['depositReps: shares.biceps', () => depositReps({}, wrong, 1, 0.03)],
  [
    'depositSustained: seconds',
    () => depositSustained({}, shares, { targetLoad: 0.5, seconds: -1 }),
  ],
  ['exerciseFatigue: shares.biceps', () => exerciseFatigue({}, wrong)],
  ['exerciseFatigue: shares.biceps', () => capacityFor({}, wrong)],
  ['repCost: intensity', () => repCost({ ...rep, intensity: 0 })],
  ['repCost: kappa', () => repCost({ ...rep, kappa: 0 })],
  ['repCost: alpha', () => repCost({ ...rep, alpha: 0.2 })],
  ['repsOverSets: intensity', () => repsOverSets({ ...sets, intensity: -1 })],
  ['repsUntil: capacity', () => repsUntil(1.1, 0.8, 0.03)],
  ['repsUntil: threshold', () => repsUntil(1, -0.1, 0.03)],
  ['repsUntil: costPerRep', () => repsUntil(1, 0.8, 0)],
  ['restCapacity: restSeconds', () => restCapacity({}, -1)],
  ['restCapacity: recoveryPerSecond', () => restCapacity({}, 1, -1)],
  ['sustainedFatigue: targetLoad', () => sustainedFatigue({ ...hold, targetLoad: 2 }, 1)],
  ['sustainedFatigue: fatigued', () => sustainedFatigue({ ...hold, fatigued: -1 }, 1)],
  ['sustainedFatigue: seconds', () => sustainedFatigue(hold, -1)],
  ['sustainedSeconds: targetLoad', () => sustainedSeconds({ ...hold, targetLoad: 2 })],
  ['sustainedSeconds: fatigued', () => sustainedSeconds({ ...hold, fatigued: -1 })],
])('a mistake in code is named: %s', (named, call) => {
  expect(rangeErrorOf(call)).toBe(named);
});
