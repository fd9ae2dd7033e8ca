import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseRamp } from './chooseRamp.ts';
import { cheapestByTrying } from './oracle/cheapestByTrying.ts';
import { planCost } from './oracle/planCost.ts';
import { smallRamp } from './oracle/smallRamps.ts';

describe('chooseRamp', () => {
  it('costs as little as the cheapest of all ramps', () => {
    fc.assert(
      fc.property(smallRamp, (problem) => {
        expect(chooseRamp(problem).cost).toBe(cheapestByTrying(problem));
      }),
      { numRuns: 3000 },
    );
  });

  it('rises from step to step, ends below the work load, and costs what it says', () => {
    fc.assert(
      fc.property(smallRamp, (problem) => {
        const choice = chooseRamp(problem);
        const loads = [...choice.steps.map(({ load }) => load), problem.work];
        expect(loads).toEqual([...new Set(loads)].sort((a, b) => a - b));
        expect(choice.steps.length).toBeLessThanOrEqual(problem.targets.length);
        // each target belongs to one of the steps, in order: one of the ways to share them out
        const costs = shareOut(problem.targets.length, choice.steps).map((chosen) =>
          planCost(problem, chosen, choice.above, choice.work),
        );
        expect(Math.min(...costs)).toBe(choice.cost);
      }),
      { numRuns: 300 },
    );
  });
});

/** All ways to give `count` targets to the steps in order, each step at least one. */
function shareOut<T>(count: number, steps: readonly T[]): readonly (readonly T[])[] {
  const [first, ...others] = steps;
  if (first === undefined) return count === 0 ? [[]] : [];
  return Array.from({ length: count }, (_, index) => index + 1).flatMap((own) =>
    shareOut(count - own, others).map((rest) => [...new Array<T>(own).fill(first), ...rest]),
  );
}
