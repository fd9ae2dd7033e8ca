import { requireNumber } from '../basis/index.ts';
import type { Load, Unit } from './Load.ts';
import { stepsOfDecimal } from './stepsOfDecimal.ts';
import { stepsPerUnit } from './stepsPerUnit.ts';

/** 45 t in grams: every load of so many thousandths is in range, in either unit. */
const MOST_THOUSANDTHS = 45_000_000;

/**
 * The load of `value` units, computed on the decimal digits and not on the float. Numbers of up to
 * three decimals, as nearly all are, are whole thousandths: no other decimal of so few digits
 * stands for the same float.
 */
export function exactSteps(where: string, value: number, unit: Unit): Load {
  requireNumber(where, 'value', value);
  const thousandths = Math.round(value * 1000);
  if (thousandths / 1000 === value && Math.abs(thousandths) <= MOST_THOUSANDTHS) {
    return (thousandths * (stepsPerUnit(unit) / 1000) + 0) as Load;
  }
  const steps = stepsOfDecimal(String(value), unit);
  if (steps.kind === 'exact') return steps.load;
  throw new RangeError(
    steps.kind === 'too-fine'
      ? `${where}: ${value} ${unit} is finer than the smallest step of a load`
      : `${where}: ${value} ${unit} is beyond the range of loads, -45 t to 45 t`,
  );
}
