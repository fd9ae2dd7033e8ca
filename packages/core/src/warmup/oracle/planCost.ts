import { changeLoading, type Loading, type ReachableLoad } from '../../equipment/index.ts';
import type { RampProblem } from '../RampChoice.ts';
import { jumpGrows, offCost } from '../rampCosts.ts';

/** The cost of a ramp that is given by one loading for each target, the same one where steps merge. */
export function planCost(
  { targets, work, pieceCost, growthCost, above: wish }: RampProblem,
  chosen: readonly ReachableLoad[],
  above: ReachableLoad | undefined,
  workWay: ReachableLoad | undefined,
): number {
  const off = chosen.map(({ load }, index) => offCost(load, targets[index] ?? load, work));
  const steps = chosen.filter((way, index) => way !== chosen[index - 1]);
  const jumps = [...steps.map(({ load }) => load), work];
  const growths = jumps.filter(
    (next, i) => i > 1 && jumpGrows(jumps[i - 2] ?? 0, jumps[i - 1] ?? work, next, work),
  ).length;
  const middle = [...steps, ...(above ? [above] : []), ...(workWay ? [workWay] : [])];
  const loadings: (Loading | 'nothing')[] = [
    'nothing',
    ...middle.map(({ loading }) => loading),
    'nothing',
  ];
  const pieces = loadings
    .slice(1)
    .map((to, index) => changeLoading(loadings[index] ?? 'nothing', to).pieces);
  return (
    sum(off) +
    (above && wish ? offCost(above.load, wish.target, work) : 0) +
    growthCost * growths +
    pieceCost * sum(pieces)
  );
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
