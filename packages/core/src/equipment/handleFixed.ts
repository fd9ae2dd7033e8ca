import { loadFromValue } from '../load/index.ts';
import type { HandlingStep } from './Handling.ts';
import { handleAddOns } from './handleAddOns.ts';
import type { FixedLoading } from './Loading.ts';

/** Weights go back to the rack and others are picked up, their add-ons with them. */
export function handleFixed(
  from: FixedLoading | 'nothing',
  to: FixedLoading | 'nothing',
): readonly HandlingStep[] {
  const [before, after] = [heldIn(from), heldIn(to)];
  if (sameInHand(before, after)) return handleAddOns(before.addOns, after.addOns, after.hands);
  return [...putBack(before), ...pickUp(after)];
}

type Held = Omit<FixedLoading, 'kind' | 'pieces' | 'hands'> & { readonly hands: 0 | 1 | 2 };

const EMPTY_HANDS: Held = { weight: { value: 0, unit: 'kg' }, hands: 0, addOns: [] };

function heldIn(loading: FixedLoading | 'nothing'): Held {
  return loading === 'nothing' ? EMPTY_HANDS : loading;
}

function sameInHand(a: Held, b: Held): boolean {
  return a.hands === b.hands && loadFromValue(a.weight) === loadFromValue(b.weight);
}

function putBack({ weight, hands, addOns }: Held): readonly HandlingStep[] {
  return [
    ...handleAddOns(addOns, [], hands),
    ...new Array<HandlingStep>(hands).fill({ action: 'put-back', weight }),
  ];
}

function pickUp({ weight, hands, addOns }: Held): readonly HandlingStep[] {
  return [
    ...new Array<HandlingStep>(hands).fill({ action: 'pick-up', weight }),
    ...handleAddOns([], addOns, hands),
  ];
}
