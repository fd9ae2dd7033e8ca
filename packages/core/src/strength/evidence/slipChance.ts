import { evidenceFigures } from '../evidenceFigures.ts';
import type { LogDensity } from '../grid/Axis.ts';
import { weightsOf } from '../grid/weightsOf.ts';
import type { PerformedSet } from '../PerformedSet.ts';
import { forEachCount } from './forEachCount.ts';
import { setLikelihood } from './setLikelihood.ts';

/** Probability that a set was loaded, counted or noted wrongly, over a belief that has seen it. */
export function slipChance(set: PerformedSet, belief: LogDensity, alpha: number): number {
  const weights = weightsOf(belief.logs);
  const right = setLikelihood(set, false);
  const any = setLikelihood(set, true);
  const share = 1 - evidenceFigures.slip.share;
  let sum = 0;
  forEachCount(set, belief, alpha, (cell, mean, spread) => {
    sum += (weights[cell] as number) * ((share * right(mean, spread)) / any(mean, spread));
  });
  return Math.min(1, Math.max(0, 1 - sum));
}
