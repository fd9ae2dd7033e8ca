import { addLoads, type Load } from '../load/index.ts';
import type { MovedShare } from './Equipment.ts';
import { HELP_TOO_LARGE } from './equipmentNotes.ts';
import { movedBodyWeight } from './movedBodyWeight.ts';

/** A body weight with what is added to it, or why that is no load. */
export type BodyLoad =
  | {
      readonly kind: 'load';
      /** What is moved, half way between the positions; rep curves go by this one. */
      readonly load: Load;
      readonly range: { readonly low: Load; readonly high: Load };
      /** `load` as a share of the body weight. */
      readonly shareOfBody: number;
    }
  | {
      readonly kind: 'refused';
      readonly reason: 'assistance-over-body-weight';
      readonly message: string;
    };

/**
 * The load of an exercise in which the person is the load: moved share × body weight + what is
 * added. Help is a negative added load, so less help is more load; the belt counts in whole.
 *
 * @param bodyWeight of the day it was lifted, more than 0.
 * @param added weight on a belt or in a vest; negative for help from a machine; 0 for none.
 * @param movedShare lowest and highest share of the body over a repetition, 0.01 to 1; the whole
 * body when it is left out.
 * @returns `refused` when the help leaves nothing to lift.
 * @throws RangeError for a body weight that is not more than 0 or a share out of range.
 * @example
 * ```ts
 * import { bodyLoad } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * const helped = bodyLoad(kg(74), kg(-20));
 * helped.kind === 'load' ? toKg(helped.load) : 0; // 54
 * bodyLoad(kg(74), kg(-74)).kind; // 'refused'
 * ```
 */
export function bodyLoad(bodyWeight: Load, added: Load, movedShare?: MovedShare): BodyLoad {
  const moved = movedBodyWeight(bodyWeight, movedShare);
  if (moved.low + added <= 0) {
    return {
      kind: 'refused',
      reason: 'assistance-over-body-weight',
      message: HELP_TOO_LARGE,
    };
  }
  const load = addLoads(moved.middle, added);
  return {
    kind: 'load',
    load,
    range: { low: addLoads(moved.low, added), high: addLoads(moved.high, added) },
    shareOfBody: load / bodyWeight,
  };
}
