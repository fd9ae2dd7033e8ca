import type { ReachableLoad } from '../equipment/index.ts';
import type { Load } from '../load/index.ts';
import type { ChangeFinder } from './changeFinder.ts';
import type { RampChoice, RampProblem } from './RampChoice.ts';
import { offCost } from './rampCosts.ts';
import { type Rung, rungsOf } from './rungs.ts';
import { setUpPieces } from './setUpPieces.ts';
import { stripPieces } from './stripPieces.ts';
import { type Chain, cheapestTrail, keepBest, type Trail } from './Trail.ts';

/** A rung with the trails to each of its loadings. */
interface ReachedRung extends Rung {
  readonly trails: readonly (readonly Trail[])[];
}

/**
 * The cheapest ramp over these rungs for each target, by dynamic programming. A state is the
 * loading on the bar and the load of the step before it, which decides whether the next jump
 * grows. Targets that take the same loading are one step.
 */
export function climb(
  problem: RampProblem,
  rungsFor: readonly (readonly Rung[])[],
  change: ChangeFinder,
): RampChoice {
  const { targets, work, workWays, above, pieceCost } = problem;
  let reached: readonly ReachedRung[] = [];
  for (const [index, rungs] of rungsFor.entries()) {
    const before = reached;
    reached = rungs.map((rung) => {
      const off = offCost(rung.load, targets[index] ?? work, work);
      if (index > 0) return advance(before, rung, off, problem, change);
      return { ...rung, trails: rung.ways.map((way) => [setUp(way, off, pieceCost)]) };
    });
  }
  if (above !== undefined) {
    const before = reached;
    reached = rungsOf(above.ways).map((rung) => {
      const off = offCost(rung.load, above.target, work);
      return { ...rung, trails: enter(before, rung.ways, work, off, problem, change) };
    });
  }
  const best = enter(reached, workWays, work, 0, problem, change)
    .flat()
    .map(({ chain, cost }) => ({ chain, cost: cost + pieceCost * stripPieces(chain.way) }))
    .reduce((a, b) => (b.cost < a.cost ? b : a));
  return written(best.chain, best.cost, above !== undefined);
}

/** The first step, from the empty bar. */
function setUp(way: ReachableLoad, off: number, pieceCost: number): Trail {
  const cost = off + pieceCost * setUpPieces(way);
  return { before: Number.NEGATIVE_INFINITY, cost, chain: { way } };
}

/** The next target on this rung: from every lighter one, or by keeping the loading. */
function advance(
  reached: readonly ReachedRung[],
  rung: Rung,
  off: number,
  problem: RampProblem,
  change: ChangeFinder,
): ReachedRung {
  const lighter = reached.filter(({ load }) => load < rung.load);
  const entered = enter(lighter, rung.ways, rung.load, off, problem, change);
  const same = reached.find(({ load }) => load === rung.load);
  return {
    ...rung,
    trails: rung.ways.map((way, index) => {
      const stayed = same?.trails[same.ways.indexOf(way)] ?? [];
      return keepBest([
        ...(entered[index] ?? []),
        ...stayed.map((trail) => ({ ...trail, cost: trail.cost + off })),
      ]);
    }),
  };
}

/** Trails into each of these loadings from all rungs, judged as a jump to `jumpTo`. */
function enter(
  reached: readonly ReachedRung[],
  ways: readonly ReachableLoad[],
  jumpTo: Load,
  off: number,
  problem: RampProblem,
  change: ChangeFinder,
): readonly (readonly Trail[])[] {
  const entered: Trail[][] = ways.map(() => []);
  for (const { load, ways: starts, trails } of reached) {
    const best = trails.map((toStart) => cheapestTrail(toStart, load, jumpTo, problem));
    const changes = change(
      starts,
      best.map(({ cost }) => cost),
      ways,
    );
    for (const [index, way] of ways.entries()) {
      const previous = best[changes.from[index] ?? 0]?.trail?.chain;
      if (previous === undefined) continue;
      const cost = (changes.costs[index] ?? 0) + off;
      entered[index]?.push({ before: load, cost, chain: { way, previous } });
    }
  }
  return entered;
}

function written(chain: Chain, cost: number, hasAbove: boolean): RampChoice {
  const ways: ReachableLoad[] = [];
  for (let link: Chain | undefined = chain; link; link = link.previous) ways.unshift(link.way);
  const above = hasAbove ? ways.at(-2) : undefined;
  return {
    steps: ways.slice(0, hasAbove ? -2 : -1),
    ...(above ? { above } : {}),
    work: chain.way,
    cost,
  };
}
