import { language, requireNumber } from '../basis/index.ts';
import { divideToNearest } from './divideToNearest.ts';
import type { Load, Unit } from './Load.ts';
import { stepsPerUnit } from './stepsPerUnit.ts';

/** How {@link formatLoad} writes a load. */
export interface FormatLoadOptions {
  readonly unit: Unit;
  /** BCP 47 tag; English when left out, never the machine's own. */
  readonly locale?: string;
  /** Decimals to round to, 0 to 11; 2 when left out. Trailing zeros are not shown. */
  readonly maxDecimals?: number;
  /** Whether ≈ goes before a number that is not the whole truth; yes when left out. */
  readonly markRounded?: boolean;
}

/**
 * A load for people to read: the number in the marks of a locale, then `kg` or `lb`.
 *
 * It is rounded from the exact load, once, a tie away from zero; the stored load is untouched.
 * A rounded number carries ≈, so that nobody takes 60.82 kg for the sum of a 20 kg bar and two
 * 45 lb plates (60.8233133 kg). Thousands carry no mark, so {@link parseLoad} reads the text back.
 * The spaces are no-break spaces: a line never ends between a number and its unit.
 *
 * @throws RangeError for `maxDecimals` outside 0 to 11, or a locale tag that is malformed.
 * @example
 * ```ts
 * import { addLoads, formatLoad, kg, lb } from '@windlass/core/load';
 * formatLoad(kg(62.5), { unit: 'kg', locale: 'de' }); // '62,5 kg'
 * const mixed = addLoads(kg(20), lb(45), lb(45));
 * formatLoad(mixed, { unit: 'kg' }); // '≈ 60.82 kg'
 * formatLoad(mixed, { unit: 'lb', maxDecimals: 0, markRounded: false }); // '134 lb'
 * ```
 */
export function formatLoad(load: Load, options: FormatLoadOptions): string {
  const { unit, locale = language, maxDecimals = 2, markRounded = true } = options;
  requireNumber('formatLoad', 'maxDecimals', maxDecimals, 0, 11);
  const power = 10n ** BigInt(maxDecimals);
  const perUnit = BigInt(stepsPerUnit(unit));
  const shown = divideToNearest(BigInt(load) * power, perUnit);
  const number = new Intl.NumberFormat(locale, {
    maximumFractionDigits: maxDecimals,
    useGrouping: false,
  }).format(Number(shown) / Number(power));
  const isRounded = shown * perUnit !== BigInt(load) * power;
  return `${isRounded && markRounded ? '≈\u00a0' : ''}${number}\u00a0${unit}`;
}
