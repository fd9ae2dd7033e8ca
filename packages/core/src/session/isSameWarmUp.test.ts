import { expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import type { RampAnswer } from '../warmup/index.ts';
import { isSameWarmUp } from './isSameWarmUp.ts';

const step = (value: number, reps: number) => ({ load: { value, unit: 'kg' } as const, reps });
const ramp = (...steps: readonly (readonly [number, number])[]) =>
  ({
    kind: 'ramp',
    steps: steps.map(([value, reps]) => ({ load: { shown: kg(value) }, reps })),
  }) as unknown as RampAnswer;
const none = { kind: 'no-ramp' } as RampAnswer;

it.each([
  ['the same sets', [step(10, 5), step(20, 3)], ramp([10, 5], [20, 3]), true],
  ['another load', [step(10, 5), step(25, 3)], ramp([10, 5], [20, 3]), false],
  ['another number of repetitions', [step(10, 5), step(20, 2)], ramp([10, 5], [20, 3]), false],
  ['another order', [step(20, 3), step(10, 5)], ramp([10, 5], [20, 3]), false],
  ['a set less', [step(10, 5)], ramp([10, 5], [20, 3]), false],
  ['a set more', [step(10, 5), step(20, 3)], ramp([10, 5]), false],
  ['none of none', [], none, true],
  ['none of some', [], ramp([10, 5]), false],
  ['one of none', [step(10, 5)], none, false],
])('%s: whether a fixed warm-up is the one that would be chosen', (_, asked, chosen, same) => {
  expect(isSameWarmUp(asked, chosen)).toBe(same);
});
