import { loadFromValue } from '../load/index.ts';
import type { HandlingStep } from './Handling.ts';
import { handleAddOns } from './handleAddOns.ts';
import type { FixedLoading } from './Loading.ts';

/** Weights go back to the rack and others are picked up, their add-ons with them. */
export function handleFixed(
  from: FixedLoading | 'nothing',
  to: FixedLoading | 'nothing',
): readonly HandlingStep[] {
  if (from !== 'nothing' && to !== 'nothing' && sameInHand(from, to)) {
    return handleAddOns(from.addOns, to.addOns, to.hands);
  }
  return [...putBack(from), ...pickUp(to)];
}

function sameInHand(a: FixedLoading, b: FixedLoading): boolean {
  return a.hands === b.hands && loadFromValue(a.weight) === loadFromValue(b.weight);
}

function putBack(loading: FixedLoading | 'nothing'): readonly HandlingStep[] {
  if (loading === 'nothing') return [];
  const { weight, hands, addOns } = loading;
  return [
    ...handleAddOns(addOns, [], hands),
    ...new Array<HandlingStep>(hands).fill({ action: 'put-back', weight }),
  ];
}

function pickUp(loading: FixedLoading | 'nothing'): readonly HandlingStep[] {
  if (loading === 'nothing') return [];
  const { weight, hands, addOns } = loading;
  return [
    ...new Array<HandlingStep>(hands).fill({ action: 'pick-up', weight }),
    ...handleAddOns([], addOns, hands),
  ];
}
