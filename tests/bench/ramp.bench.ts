/**
 * How much faster the library finds the best ramp than a general integer-program solver.
 * Run: `node tests/bench/ramp.bench.ts`. Both answer the same question in one run and have to agree.
 * The ramps are small ones, drawn with a fixed seed. The solver's program grows with the square of
 * the loadings and the library's search hardly does, so the ratio is given by size.
 */
import fc from 'fast-check';
import { chooseRamp } from '../../packages/core/src/warmup/chooseRamp.ts';
import { cheapestByMip } from '../../packages/core/src/warmup/oracle/cheapestByMip.ts';
import { smallRamp } from '../../packages/core/src/warmup/oracle/smallRamps.ts';

/** Loadings times targets of the ramps that are compared, smallest and largest. */
const sizes = [
  [20, 36],
  [37, 60],
  [61, 100],
] as const;
const RAMPS = 20;
const ROUNDS = 9;

const cheapest = await cheapestByMip();
for (const [least, most] of sizes) {
  const sized = smallRamp.filter(({ above, ways, targets }) => {
    const size = ways.length * targets.length;
    return above === undefined && size >= least && size <= most;
  });
  const problems = fc.sample(sized, { numRuns: RAMPS, seed: 20_270_315 });
  const start = performance.now();
  const bySolver = problems.map((problem) => cheapest(problem));
  const solver = (performance.now() - start) / RAMPS;
  const times = Array.from({ length: ROUNDS }, () => {
    const from = performance.now();
    for (const problem of problems) chooseRamp(problem);
    return (performance.now() - from) / RAMPS;
  }).sort((a, b) => a - b);
  const ours = times[Math.floor(ROUNDS / 2)] ?? Number.NaN;
  const differing = problems.filter((problem, at) => chooseRamp(problem).cost !== bySolver[at]);
  if (differing.length > 0) throw new Error(`${differing.length} of ${RAMPS} ramps differ`);
  console.log(
    `${least} to ${most} loadings times targets: ${(1000 * ours).toFixed(0)} µs a ramp; ` +
      `solver ${solver.toFixed(1)} ms: ${Math.round(solver / ours)} times faster`,
  );
}
