import { repCost } from '@windlass/core/capacity';
import { shareForReps } from '@windlass/core/strength';
import type { Why } from '../contract/Answer.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { PairResult } from './compute.ts';
import { curveAtPace } from './curveAtPace.ts';
import type { PairInputs } from './fields.ts';
import { said } from './words.ts';

/** From the isolation set over what is back to what is left of the lift, with these numbers. */
export function whyPair(input: PairInputs, result: PairResult): Why {
  const { isolation, compound, question, forecast } = result;
  const { reps, repsLeft } = question.isolation;
  const curve = curveAtPace(question.isolation);
  const cost = repCost({ intensity: shareForReps(reps + repsLeft, curve), ...curve });
  const { capacity, recovered, loadShare } = forecast;
  return {
    formula: said.formula,
    steps: [
      said.takes(isolation.name, reps, formatPercent(reps * cost)),
      said.isBack(input.between, formatPercent(recovered)),
      said.liftLeft(compound.name, formatPercent(capacity.with), formatPercent(capacity.without)),
      said.followsLoad(input.usualReps, formatPercent(loadShare.likely)),
    ],
    restsOn: said.restsOn,
  };
}
