import { expect, it } from 'vitest';
import { rangeErrorOf } from '../basis/rangeErrorOf.testing.ts';
import { addLoads } from './addLoads.ts';
import { formatLoad } from './formatLoad.ts';
import { isOnGrid } from './isOnGrid.ts';
import { kg } from './kg.ts';
import { lb } from './lb.ts';
import { loadFromValue } from './loadFromValue.ts';
import { roundToGrid } from './roundToGrid.ts';
import { scaleLoad } from './scaleLoad.ts';

const none = { step: kg(0) };

it.each([
  ['kg: value', () => kg(Number.NaN)],
  ['lb: value', () => lb(Number.NaN)],
  ['loadFromValue: value', () => loadFromValue({ value: Number.NaN, unit: 'kg' })],
  ['addLoads: sum in steps', () => addLoads(kg(45_000), kg(1))],
  ['formatLoad: maxDecimals', () => formatLoad(kg(1), { unit: 'kg', maxDecimals: 12 })],
  ['isOnGrid: step', () => isOnGrid(kg(20), none)],
  ['roundToGrid: step', () => roundToGrid(kg(20), none, 'down')],
  ['scaleLoad: times', () => scaleLoad(kg(1), Number.NaN)],
  ['scaleLoad: over', () => scaleLoad(kg(1), 1, Number.NaN)],
  ['scaleLoad: result in steps', () => scaleLoad(kg(1000), 46)],
])('a mistake in code is named: %s', (named, call) => {
  expect(rangeErrorOf(call)).toBe(named);
});
