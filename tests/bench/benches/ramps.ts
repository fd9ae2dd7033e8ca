import fc from 'fast-check';
import highsLoader from 'highs';
import { chooseRamp } from '../../../packages/core/src/warmup/chooseRamp.ts';
import { rampProgram } from '../../../packages/core/src/warmup/oracle/rampProgram.ts';
import { smallRamp } from '../../../packages/core/src/warmup/oracle/smallRamps.ts';
import type { RampProblem } from '../../../packages/core/src/warmup/RampChoice.ts';
import type { Bench, Ratio } from '../Benchmark.ts';
import { fastest, fastestOf, times, written } from '../timing.ts';

/** Loadings times targets, smallest and largest. */
const sizes = [
  [2, 19],
  [20, 36],
  [37, 60],
  [61, 100],
] as const;

/**
 * The ramp as a whole beside the integer solver. Only the solving is timed on its side, not the
 * writing of its program; both sides have answered before they are timed, and have to agree.
 */
export const ramps: Bench = {
  id: 'ramps',
  title: 'The best ramp as a whole',
  run: async ({ quick }) => {
    const highs = await highsLoader();
    const lines: string[] = [];
    const ratios: Ratio[] = [];
    const total = { ours: 0, solver: 0 };
    for (const [least, most] of sizes) {
      const problems = drawn(least, most, quick ? 12 : 40);
      const programs = problems.map(rampProgram);
      const costs = programs.map((program) => Math.round(highs.solve(program).ObjectiveValue));
      const differing = problems.filter((problem, at) => chooseRamp(problem).cost !== costs[at]);
      if (differing.length > 0) throw new Error(`${differing.length} ramps differ`);
      const solve = () => {
        for (const program of programs) highs.solve(program);
      };
      // A solver of small programs is twice as fast once its own code has been compiled well.
      const solver = fastestOf(most < 20 ? 30 : 3, solve);
      const ours = fastest(() => {
        for (const problem of problems) chooseRamp(problem);
      });
      total.ours += ours;
      total.solver += solver;
      const count = problems.length;
      lines.push(
        `${least} to ${most} loadings times targets, ${count} ramps: ${written(ours / count)} against ${written(solver / count)} each, ${times(solver / ours)} as fast`,
      );
      ratios.push({ id: `ramps/${least}-${most}`, value: solver / ours });
    }
    lines.push(`all together: ${times(total.solver / total.ours)} as fast`);
    ratios.push({ id: 'ramps/all', value: total.solver / total.ours, atLeast: 200 });
    return { lines, ratios };
  },
};

function drawn(least: number, most: number, count: number): readonly RampProblem[] {
  const sized = smallRamp.filter(({ above, ways, targets }) => {
    const size = ways.length * targets.length;
    return above === undefined && size >= least && size <= most;
  });
  return fc.sample(sized, { numRuns: count, seed: 20_270_315 });
}
