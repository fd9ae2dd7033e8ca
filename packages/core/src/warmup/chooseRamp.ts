import type { Load } from '../load/index.ts';
import { changeFinder } from './changeFinder.ts';
import { climb } from './climb.ts';
import type { RampChoice, RampProblem } from './RampChoice.ts';
import { offCost } from './rampCosts.ts';
import { type Rung, rungsOf } from './rungs.ts';
import { setUpPieces } from './setUpPieces.ts';
import { stripPieces } from './stripPieces.ts';

/** At most so many loads are tried for one target: the nearest ones. */
const MOST_RUNGS = 40;

/**
 * The ramp with the lowest cost (see {@link RampChoice}), exactly, in two passes. The first takes
 * one loading for each load, so its ramp is good but may not be the best. The second takes all
 * loadings, but those that cost more than that ramp by themselves: by their distance from the
 * target and by the pieces that it takes to get to them and from them to the work load, since no
 * detour handles fewer.
 *
 * @throws RangeError when there is no target, or no loading below the work load or for it.
 */
export function chooseRamp(problem: RampProblem): RampChoice {
  const { targets, workWays, above, pieceCost } = problem;
  const rungs = rungsOf(problem.ways);
  if (rungs.length === 0 || targets.length === 0 || workWays.length === 0) {
    throw new RangeError(
      'chooseRamp: there must be a target, a lighter loading and a work loading',
    );
  }
  const near = targets.map((target) => nearestRungs(rungs, target));
  const nearWays = new Set(near.flat().flatMap(({ ways }) => ways));
  const change = changeFinder([...nearWays, ...(above?.ways ?? []), ...workWays], pieceCost);
  const oneWay = near.map((tried) =>
    tried.map(({ load, ways }) => ({ load, ways: ways.slice(0, 1) })),
  );
  const first = climb(problem, oneWay, change);
  const backFromWork = workWays.map((way) => pieceCost * stripPieces(way));
  const worthwhile = near.map((tried, index) =>
    tried.flatMap(({ load, ways }) => {
      const off = offCost(load, targets[index] ?? load, problem.work);
      const onwards = change(workWays, backFromWork, ways);
      const kept = ways.filter((way, at) => {
        const up = pieceCost * setUpPieces(way);
        return off + up + (onwards.costs[at] ?? 0) <= first.cost;
      });
      return kept.length > 0 ? [{ load, ways: kept }] : [];
    }),
  );
  return climb(problem, worthwhile, change);
}

function nearestRungs(rungs: readonly Rung[], target: Load): readonly Rung[] {
  return rungs
    .toSorted((a, b) => Math.abs(a.load - target) - Math.abs(b.load - target))
    .slice(0, MOST_RUNGS);
}
