import { type Load, type LoadValue, loadFromValue, scaleLoad } from '@windlass/core/load';
import type { GearInput } from './gearFields.ts';

/** Stack number to handle force; 1 where what is written is what is moved. */
export function ratioOf({ gear, pulley }: Pick<GearInput, 'gear' | 'pulley'>): number {
  return gear === 'stack' ? Number(pulley) : 1;
}

/** What is moved with a load as it is written on the equipment: a stack number through its pulley. */
export function movedLoad(written: LoadValue, gear: Pick<GearInput, 'gear' | 'pulley'>): Load {
  const ratio = ratioOf(gear);
  const load = loadFromValue(written);
  return ratio === 1 ? load : scaleLoad(load, 1, ratio);
}
