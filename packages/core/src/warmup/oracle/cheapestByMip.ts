import highsLoader from 'highs';
import type { RampProblem } from '../RampChoice.ts';
import { rampProgram } from './rampProgram.ts';

/** The lowest cost of any ramp without a step above the work load, by a general integer solver. */
export async function cheapestByMip(): Promise<(problem: RampProblem) => number> {
  const highs = await highsLoader();
  return (problem) => {
    const solution = highs.solve(rampProgram(problem));
    if (solution.Status !== 'Optimal') throw new Error(solution.Status);
    return Math.round(solution.ObjectiveValue);
  };
}
