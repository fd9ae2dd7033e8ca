import type { Load } from '../load/index.ts';
import type { Handling, HandlingStep } from './Handling.ts';
import { handleFixed } from './handleFixed.ts';
import { handlePin } from './handlePin.ts';
import { handlePlates } from './handlePlates.ts';
import type { AssistanceLoading, Loading, PlateLoading } from './Loading.ts';

/**
 * What the hands have to do to get from one loading of a piece of equipment to another.
 *
 * A sleeve is a stack: the last plate on is the first off. So what both loadings have in common
 * from the inside stays, everything outside it comes off, and no sequence moves fewer pieces. The
 * two ends of a bar take turns: the next piece is always the one that leaves the ends more nearly
 * equal, the left one where that is the same.
 *
 * @param from `'nothing'` is the empty bar, the bare stack, the weights still on the rack.
 * @param to `'nothing'` strips everything down again; a pin stays where it is.
 * @returns no steps for the same loading.
 * @throws RangeError for loadings that no single piece of equipment can have.
 * @example
 * ```ts
 * import { changeLoading, type PlateLoading } from '@windlass/core/equipment';
 * const loaded = (...kilograms: readonly number[]): PlateLoading => {
 *   const plates = kilograms.map((value) => ({ weight: { value, unit: 'kg' as const } }));
 *   return { kind: 'plates', stacks: [{ place: 'left', plates }, { place: 'right', plates }], pieces: 2 * plates.length };
 * };
 * changeLoading(loaded(20, 5), loaded(20, 10)).steps.map(({ action }) => action); // ['take-off', 'take-off', 'put-on', 'put-on']
 * changeLoading(loaded(20), loaded(20)).pieces; // 0
 * ```
 */
export function changeLoading(from: Loading | 'nothing', to: Loading | 'nothing'): Handling {
  const steps = stepsBetween(from, to);
  const differences = steps.map((step) => ('sideDifference' in step ? step.sideDifference : 0));
  return {
    steps,
    pieces: steps.length,
    mostSideDifference: Math.max(0, ...differences) as Load,
  };
}

function stepsBetween(from: Loading | 'nothing', to: Loading | 'nothing'): readonly HandlingStep[] {
  if (isPlain(from) && isPlain(to)) return handlePlates(from, to);
  if (is('fixed', from) && is('fixed', to)) return handleFixed(from, to);
  if (is('pin', from) && is('pin', to)) return handlePin(from, to);
  throw new RangeError(
    `changeLoading: no equipment changes from ${nameOf(from)} to ${nameOf(to)}; both loadings must be of one piece of equipment`,
  );
}

function is<K extends Loading['kind']>(
  kind: K,
  loading: Loading | 'nothing',
): loading is Extract<Loading, { kind: K }> | 'nothing' {
  return loading === 'nothing' || loading.kind === kind;
}

function isPlain(
  loading: Loading | 'nothing',
): loading is PlateLoading | AssistanceLoading | 'nothing' {
  return is('plates', loading) || is('assistance', loading);
}

function nameOf(loading: Loading | 'nothing'): string {
  return loading === 'nothing' ? loading : loading.kind;
}
