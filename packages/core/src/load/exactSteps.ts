import type { Load } from './Load.ts';

/** The whole number of steps in `value` units, computed on the decimal digits and not on the float. */
export function exactSteps(where: string, value: number, stepsPerUnit: number): Load {
  if (!Number.isFinite(value)) throw new RangeError(`${where}: not a finite number: ${value}`);
  const [mantissa = '0', exponent = '0'] = String(value).split('e');
  const [whole = '0', decimals = ''] = mantissa.split('.');
  const scale = decimals.length - Number(exponent);
  const digits = BigInt(whole + decimals) * BigInt(stepsPerUnit);
  const divisor = 10n ** BigInt(Math.max(scale, 0));
  const steps = (scale < 0 ? digits * 10n ** BigInt(-scale) : digits) / divisor;
  if (steps * divisor !== (scale < 0 ? digits * 10n ** BigInt(-scale) : digits)) {
    throw new RangeError(`${where}: ${value} is finer than the smallest step of a load`);
  }
  const result = Number(steps);
  if (!Number.isSafeInteger(result)) {
    throw new RangeError(`${where}: ${value} is beyond the range of exact loads (90 t)`);
  }
  return result as Load;
}
