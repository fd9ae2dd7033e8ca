import { kg } from '@windlass/core/load';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bridgeReps } from './bridgeReps.ts';

describe('bridgeReps', () => {
  it('asks for the goal itself where nothing changes', () => {
    const { low, likely, high } = bridgeReps(8, kg(20), kg(20));
    for (const reps of [low, likely, high]) expect(reps).toBeCloseTo(8, 9);
  });

  it('asks for more before a larger step, and for more from the enduring', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 15 }),
        fc.integer({ min: 20, max: 27 }),
        (goal, next) => {
          const smaller = bridgeReps(goal, kg(20), kg(next));
          const larger = bridgeReps(goal, kg(20), kg(next + 1));
          expect(larger.likely).toBeGreaterThan(smaller.likely);
          expect(larger.high).toBeGreaterThan(larger.likely);
          expect(larger.low).toBeLessThan(larger.likely);
        },
      ),
    );
  });
});
