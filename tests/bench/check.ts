import fc from 'fast-check';
import { chooseRamp } from '../../packages/core/src/warmup/chooseRamp.ts';
import { cheapestByMip } from '../../packages/core/src/warmup/oracle/cheapestByMip.ts';
import { cheapestByTrying } from '../../packages/core/src/warmup/oracle/cheapestByTrying.ts';
import { smallRamp } from '../../packages/core/src/warmup/oracle/smallRamps.ts';

const bySolver = 2000;
const byTrying = 20_000;

/** The ramp against every ramp there is and against the integer solver, on thousands of gyms. */
export async function check(say: (line: string) => void): Promise<boolean> {
  const cheapest = await cheapestByMip();
  const forSolver = smallRamp.filter(
    ({ above, ways, targets }) => above === undefined && ways.length * targets.length <= 60,
  );
  const tried = differing(byTrying, 20_270_316, smallRamp, cheapestByTrying);
  say(`ramps against trying all: ${byTrying - tried} of ${byTrying} equal`);
  const solved = differing(bySolver, 20_270_317, forSolver, cheapest);
  say(`ramps against the integer solver: ${bySolver - solved} of ${bySolver} equal`);
  return tried + solved === 0;
}

function differing(
  runs: number,
  seed: number,
  problems: typeof smallRamp,
  costOf: (problem: Parameters<typeof chooseRamp>[0]) => number,
): number {
  let count = 0;
  fc.assert(
    fc.property(problems, (problem) => {
      if (chooseRamp(problem).cost !== costOf(problem)) count += 1;
    }),
    { numRuns: runs, seed },
  );
  return count;
}
