/**
 * How much faster the library finds fewest-pieces loadings than a general integer-program solver.
 * Run: `node tests/bench/loading.bench.ts`. Both answer the same question about the same gym in one
 * run and have to agree; the solver is timed on a sample of the loads.
 */

import type { PlateStock } from '../../packages/core/src/equipment/index.ts';
import { reachableLoads } from '../../packages/core/src/equipment/index.ts';
import { kgBar, kgPlates, plate } from '../../packages/core/src/equipment/oracle/exampleGear.ts';
import { fewestPiecesByMip } from '../../packages/core/src/equipment/oracle/fewestPiecesByMip.ts';
import { kg, subtractLoad } from '../../packages/core/src/load/index.ts';

const gyms: readonly (readonly [string, readonly PlateStock[]])[] = [
  ['7 kilogram kinds, 8 pieces each', kgPlates([25, 20, 15, 10, 5, 2.5, 1.25], 8)],
  ['10 kilogram kinds, 8 pieces each', kgPlates([50, 25, 20, 15, 10, 5, 2.5, 1.25, 0.5, 0.25], 8)],
  [
    '5 kilogram and 5 pound kinds, 8 pieces each',
    [
      ...kgPlates([25, 20, 10, 5, 1.25], 8),
      ...[45, 35, 10, 5, 2.5].map((pounds) => ({ ...plate(pounds, 'lb'), pieces: 8 })),
    ],
  ],
];
const SAMPLE = 60;
const ROUNDS = 51;

const fewestPieces = await fewestPiecesByMip();
for (const [name, plates] of gyms) {
  const list = reachableLoads(kgBar(20), { plates });
  if (list.kind === 'none') throw new Error(list.message);
  const every = Math.ceil(list.loads.length / SAMPLE);
  const sample = list.loads.filter((_, index) => index % every === 0);
  const solver = median(3, () => {
    for (const { load, loading } of sample) {
      const pieces = fewestPieces(plates, subtractLoad(load, kg(20)));
      if (pieces !== loading.pieces) throw new Error(`${name}: ${pieces}, not ${loading.pieces}`);
    }
  });
  const ours = median(ROUNDS, () => reachableLoads(kgBar(20), { plates }));
  const perLoad = ours / list.loads.length;
  const perSolve = solver / sample.length;
  console.log(
    `${name}: ${list.loads.length} loads in ${ours.toFixed(2)} ms, ` +
      `${(1000 * perLoad).toFixed(2)} µs a load; solver ${perSolve.toFixed(2)} ms a load: ` +
      `${Math.round(perSolve / perLoad)} times faster, ` +
      `${(perSolve / ours).toFixed(1)} for all loads against one`,
  );
}

function median(rounds: number, run: () => unknown): number {
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[Math.floor(rounds / 2)] ?? 0;
}
