import { loadFromValue } from '../load/index.ts';
import type { HandlingStep } from './Handling.ts';
import { handleAddOns } from './handleAddOns.ts';
import type { PinLoading } from './Loading.ts';

/** One movement for the pin, if it moves, and one for each add-on that changes. */
export function handlePin(
  from: PinLoading | 'nothing',
  to: PinLoading | 'nothing',
): readonly HandlingStep[] {
  const [before, after] = [pinOf(from), pinOf(to)];
  const move: readonly HandlingStep[] =
    to === 'nothing' || before === after ? [] : [{ action: 'move-pin', to: to.pin }];
  return [...move, ...handleAddOns(addOnsOf(from), addOnsOf(to), 1)];
}

function pinOf(loading: PinLoading | 'nothing'): number | undefined {
  return loading === 'nothing' ? undefined : loadFromValue(loading.pin);
}

function addOnsOf(loading: PinLoading | 'nothing'): PinLoading['addOns'] {
  return loading === 'nothing' ? [] : loading.addOns;
}
