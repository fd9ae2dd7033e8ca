import { decimalFraction } from './decimalFraction.ts';
import { LARGEST_LOAD, type Load, type Unit } from './Load.ts';
import { stepsPerUnit } from './stepsPerUnit.ts';

/** The whole number of steps in a written decimal, or why there is none. */
export type StepsOfDecimal =
  | { readonly kind: 'exact'; readonly load: Load }
  | { readonly kind: 'too-fine' }
  | { readonly kind: 'out-of-range' };

export function stepsOfDecimal(decimal: string, unit: Unit): StepsOfDecimal {
  const { numerator, denominator } = decimalFraction(decimal);
  const scaled = numerator * BigInt(stepsPerUnit(unit));
  const steps = scaled / denominator;
  if (steps > LARGEST_LOAD || steps < -LARGEST_LOAD) return { kind: 'out-of-range' };
  if (steps * denominator !== scaled) return { kind: 'too-fine' };
  return { kind: 'exact', load: Number(steps) as Load };
}
