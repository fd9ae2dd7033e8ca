import { kg, type Load } from '@windlass/core/load';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type StepRun, stepRuns } from './stepRuns.ts';

const inKg = (...values: readonly number[]) => values.map(kg);
const expand = ({ first, last, step }: StepRun): readonly Load[] =>
  step === 0
    ? [first]
    : Array.from({ length: (last - first) / step + 1 }, (_, at) => (first + at * step) as Load);

describe('stepRuns', () => {
  it('breaks at a gap', () => {
    expect(stepRuns(inKg(4, 6, 8, 12, 14, 16))).toEqual([
      { first: kg(4), last: kg(8), step: kg(2) },
      { first: kg(12), last: kg(16), step: kg(2) },
    ]);
  });

  it('leaves two of a kind alone', () => {
    expect(stepRuns(inKg(4, 6)).map(({ step }) => step)).toEqual([0, 0]);
    expect(stepRuns([])).toEqual([]);
  });

  it('says every load once, whatever the loads', () => {
    const loads = fc
      .uniqueArray(fc.integer({ min: -50, max: 60 }), { maxLength: 40 })
      .map((values) => values.sort((a, b) => a - b).map(kg));
    fc.assert(
      fc.property(loads, (some) => {
        expect(stepRuns(some).flatMap(expand)).toEqual(some);
      }),
    );
  });
});
