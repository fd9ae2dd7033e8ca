import { requireNumber } from '../basis/index.ts';
import { decimalFraction } from './decimalFraction.ts';
import { divideToNearest } from './divideToNearest.ts';
import { LARGEST_LOAD, type Load } from './Load.ts';

/**
 * A share or a multiple of a load: load × times ÷ over, computed as an exact fraction.
 *
 * Both numbers are read as the decimals they are written as, so 70 % of 175 kg is 122.5 kg and
 * not 122.49999999999999. A percentage goes in as it is (`scaleLoad(load, 72.5, 100)`), a pulley
 * as its ratio (`scaleLoad(load, 1, 2)`). Where the result is not a whole number of steps it is
 * rounded once, to the nearest step of 10 ng, a tie away from zero.
 *
 * @param times any finite number; negative turns a load into assistance.
 * @param over a number that is not zero.
 * @throws RangeError for other arguments, or when the result is beyond -45 t to 45 t.
 * @example
 * ```ts
 * import { kg, scaleLoad, toKg } from '@windlass/core/load';
 * toKg(scaleLoad(kg(140), 72.5, 100)); // 101.5
 * toKg(scaleLoad(kg(50), 1.1)); // 55
 * toKg(scaleLoad(kg(40), 1, 3)); // 13.33333333333
 * ```
 */
export function scaleLoad(load: Load, times: number, over = 1): Load {
  requireNumber('scaleLoad', 'times', times);
  requireNumber('scaleLoad', 'over', over);
  if (over === 0) throw new RangeError('scaleLoad: over must not be 0');
  const multiplier = decimalFraction(String(times));
  const divisor = decimalFraction(String(over));
  const steps = Number(
    divideToNearest(
      BigInt(load) * multiplier.numerator * divisor.denominator,
      multiplier.denominator * divisor.numerator,
    ),
  );
  requireNumber('scaleLoad', 'result in steps', steps, -LARGEST_LOAD, LARGEST_LOAD);
  return steps as Load;
}
