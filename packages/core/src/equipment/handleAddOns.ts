import { type LoadValue, loadFromValue } from '../load/index.ts';
import type { HandlingStep } from './Handling.ts';

/** Add-ons lie loose, so only those that are in one set and not in the other are touched. */
export function handleAddOns(
  from: readonly LoadValue[],
  to: readonly LoadValue[],
  sides: number,
): readonly HandlingStep[] {
  const times = (weights: readonly LoadValue[], action: 'remove-add-on' | 'fit-add-on') =>
    weights.flatMap((weight) => new Array<HandlingStep>(sides).fill({ action, weight }));
  return [...times(without(from, to), 'remove-add-on'), ...times(without(to, from), 'fit-add-on')];
}

/** Weights of the first list that are left when each of the second has cancelled one. */
function without(weights: readonly LoadValue[], taken: readonly LoadValue[]): readonly LoadValue[] {
  const cancel = taken.map(loadFromValue);
  return weights.filter((weight) => {
    const at = cancel.indexOf(loadFromValue(weight));
    if (at >= 0) cancel.splice(at, 1);
    return at < 0;
  });
}
