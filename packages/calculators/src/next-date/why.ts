import { hoursUntilReady, unknownHabit } from '@windlass/core/recovery';
import type { Why } from '../contract/Answer.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { NextDateResult } from './compute.ts';
import type { NextDateInput } from './fields.ts';
import { muscleName } from './muscleName.ts';
import { said } from './words.ts';

/** From the sets of the muscle that holds back to its hours, with these numbers. */
export function whyDate({ status }: NextDateInput, { shared, options }: NextDateResult): Why {
  const [{ muscle, dose, effects }] = shared;
  const { habit = unknownHabit } = options;
  const plain = hoursUntilReady(dose.hardSets, status, { ...habit, shift: 0 });
  let hours = plain.likely;
  const factors = effects.map(({ factor, says }) => {
    hours *= factor;
    return said.factor(says, formatNumber(factor), formatNumber(hours, 1));
  });
  const hard = formatNumber(dose.hardSets, 2);
  return {
    formula: said.formula,
    steps: [
      said.dose(muscleName(muscle), formatNumber(dose.countedSets, 1), hard),
      said.base(hard, status === 'trained', formatNumber(plain.likely, 1)),
      ...factors,
      said.spread(formatNumber(plain.cautious / plain.likely, 2)),
    ],
    restsOn: said.restsOn,
  };
}
