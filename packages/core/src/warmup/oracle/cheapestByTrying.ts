import { changeLoading, type ReachableLoad } from '../../equipment/index.ts';
import type { RampProblem } from '../RampChoice.ts';

/** The lowest cost of any ramp, by trying every loading for every target and for the work load. */
export function cheapestByTrying(problem: RampProblem): number {
  const { targets, ways, workWays, above, work, pieceCost, growthCost } = problem;
  let cheapest = Number.POSITIVE_INFINITY;
  const moved = (from: ReachableLoad | undefined, to: ReachableLoad | undefined) =>
    pieceCost * changeLoading(from?.loading ?? 'nothing', to?.loading ?? 'nothing').pieces;
  const off = (load: number, target: number) =>
    Math.round((1000 * Math.abs(load - target)) / work) ** 2;
  const finish = (last: ReachableLoad, cost: number): void => {
    for (const workWay of workWays) {
      const end = moved(workWay, undefined);
      if (above === undefined) {
        cheapest = Math.min(cheapest, cost + moved(last, workWay) + end);
        continue;
      }
      for (const up of above.ways) {
        const over = off(up.load, above.target) + moved(last, up) + moved(up, workWay);
        cheapest = Math.min(cheapest, cost + over + end);
      }
    }
  };
  const visit = (index: number, steps: readonly ReachableLoad[], cost: number): void => {
    if (cost >= cheapest) return;
    const last = steps.at(-1);
    const target = targets[index];
    if (target === undefined) {
      if (last) finish(last, cost + grown([...steps.map(({ load }) => load), work]));
      return;
    }
    for (const way of ways) {
      if (last && way.load <= last.load && way !== last) continue;
      const next = way === last ? steps : [...steps, way];
      visit(index + 1, next, cost + off(way.load, target) + (way === last ? 0 : moved(last, way)));
    }
  };
  const grown = (loads: readonly number[]): number => {
    const jumps = loads.slice(1).map((load, index) => load - (loads[index] ?? 0));
    const growing = jumps.filter((jump, i) => i > 0 && jump > (jumps[i - 1] ?? 0) + 0.01 * work);
    return growthCost * growing.length;
  };
  visit(0, [], 0);
  return cheapest;
}
