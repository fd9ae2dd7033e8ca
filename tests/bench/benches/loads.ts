import { type PlateStock, reachableLoads } from '../../../packages/core/src/equipment/index.ts';
import { kgBar, kgPlates, plate } from '../../../packages/core/src/equipment/oracle/exampleGear.ts';
import { fewestPiecesByMip } from '../../../packages/core/src/equipment/oracle/fewestPiecesByMip.ts';
import { kg, subtractLoad } from '../../../packages/core/src/load/index.ts';
import type { Bench, Ratio } from '../Benchmark.ts';
import { fastest, fastestOf, times, written } from '../timing.ts';

const gyms: readonly (readonly [id: string, name: string, plates: readonly PlateStock[]])[] = [
  ['7-kinds', '7 kilogram kinds, 8 pieces each', kgPlates([25, 20, 15, 10, 5, 2.5, 1.25], 8)],
  [
    '10-kinds',
    '10 kilogram kinds, 8 pieces each',
    kgPlates([50, 25, 20, 15, 10, 5, 2.5, 1.25, 0.5, 0.25], 8),
  ],
  [
    'kg-and-lb',
    '5 kilogram and 5 pound kinds, 8 pieces each',
    [
      ...kgPlates([25, 20, 10, 5, 1.25], 8),
      ...[45, 35, 10, 5, 2.5].map((pounds) => ({ ...plate(pounds, 'lb'), pieces: 8 })),
    ],
  ],
];

/** All loads of a gym, each with the loading of fewest pieces, beside an integer program a load. */
export const loads: Bench = {
  id: 'loads',
  title: 'Loads of a gym, fewest pieces for each',
  run: async ({ quick }) => {
    const fewestPieces = await fewestPiecesByMip();
    const lines: string[] = [];
    const ratios: Ratio[] = [];
    for (const [id, name, plates] of gyms) {
      const list = reachableLoads(kgBar(20), { plates });
      if (list.kind === 'none') throw new Error(list.message);
      const sampled = quick ? 10 : 60;
      const every = Math.ceil(list.loads.length / sampled);
      const sample = list.loads.filter((_, index) => index % every === 0);
      const solve = () => {
        for (const { load, loading } of sample) {
          const pieces = fewestPieces(plates, subtractLoad(load, kg(20)));
          if (pieces !== loading.pieces) throw new Error(`${name}: ${pieces}, ${loading.pieces}`);
        }
      };
      const oneSolve = fastestOf(2, solve) / sample.length;
      const all = fastest(() => reachableLoads(kgBar(20), { plates }));
      const count = list.loads.length;
      lines.push(
        `${name}: ${count} loads in ${written(all)}; the solver takes ${written(oneSolve)} for one`,
        `  load for load ${times((oneSolve * count) / all)} as fast (the solver's time for all ${count}, from ${sample.length} of them)`,
        `  the whole list against one single load of the solver: ${times(oneSolve / all)} as fast`,
      );
      ratios.push({ id: `loads/${id}/each`, value: (oneSolve * count) / all });
      ratios.push({ id: `loads/${id}/list-against-one`, value: oneSolve / all });
    }
    return { lines, ratios };
  },
};
