import { kg } from '../../../packages/core/src/load/index.ts';
import {
  generalCurve,
  loadForWindow,
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  strengthFrom,
} from '../../../packages/core/src/strength/index.ts';
import type { Bench } from '../Benchmark.ts';
import { fastest, times, written } from '../timing.ts';

const history = Array.from(
  { length: 12 },
  (_, index): PerformedSet => ({
    load: kg(80 + 5 * (index % 3)),
    reps: 11 - 3 * (index % 3),
    end: { kind: 'failure' },
    day: 3 * index,
    secondsPerRep: 3,
  }),
);
const choices = Array.from({ length: 40 }, (_, index) => ({ load: kg(50 + 2.5 * index) }));

/** A belief from twelve sets and the best of forty loads, on the usual grid and on a finer one. */
function answer(cells?: { readonly columns: number; readonly rows: number }) {
  const belief = strengthFrom({
    sets: history,
    prior: priorFor(generalCurve),
    today: 36,
    ...(cells && { cells }),
  });
  if (belief.kind !== 'posterior') throw new Error(belief.kind);
  const window = { minReps: 8, maxReps: 11 };
  const best = loadForWindow({ posterior: belief, choices, window, secondsPerRep: 4 });
  if (best.kind !== 'found') throw new Error(best.kind);
  return { max: oneRepMaxKg(belief), inside: best.best.inside };
}

/** The belief about a lifter on the usual grid beside one with ten times as many cells both ways. */
export const posterior: Bench = {
  id: 'posterior',
  title: 'What twelve sets say, and the best of forty loads',
  run: async () => {
    const finer = { columns: 960, rows: 320 };
    const usual = answer();
    const start = performance.now();
    const exact = answer(finer);
    const slow = performance.now() - start;
    const ours = fastest(() => answer());
    const off = (end: 'low' | 'likely' | 'high') => Math.abs(usual.max[end] / exact.max[end] - 1);
    const furthest = Math.max(off('low'), off('likely'), off('high'));
    if (furthest > 0.005) throw new Error(`the interval differs by ${furthest}`);
    return {
      lines: [
        `usual grid ${written(ours)}, ten times finer both ways ${written(slow)}: ${times(slow / ours)} as fast`,
        `the one-rep max differs by ${(100 * furthest).toFixed(2)} %, the chance of the window by ${(100 * Math.abs(usual.inside - exact.inside)).toFixed(2)} points`,
      ],
      ratios: [{ id: 'posterior/grid', value: slow / ours }],
    };
  },
};
