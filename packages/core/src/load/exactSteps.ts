import { requireNumber } from '../basis/index.ts';
import type { Load, Unit } from './Load.ts';
import { stepsOfDecimal } from './stepsOfDecimal.ts';

/** The load of `value` units, computed on the decimal digits and not on the float. */
export function exactSteps(where: string, value: number, unit: Unit): Load {
  requireNumber(where, 'value', value);
  const steps = stepsOfDecimal(String(value), unit);
  if (steps.kind === 'exact') return steps.load;
  throw new RangeError(
    steps.kind === 'too-fine'
      ? `${where}: ${value} ${unit} is finer than the smallest step of a load`
      : `${where}: ${value} ${unit} is beyond the range of loads, -45 t to 45 t`,
  );
}
