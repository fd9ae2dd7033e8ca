import { language } from './language.ts';

/**
 * A number as it stands in a sentence, with so many decimals and the mark of the language.
 *
 * @param value any finite number.
 * @param decimals 0 to 20.
 * @example
 * ```ts
 * import { inDecimals } from '@windlass/core/basis';
 * inDecimals(10, 1); // '10.0'
 * inDecimals(1234.56, 1); // '1,234.6'
 * ```
 */
export function inDecimals(value: number, decimals: number): string {
  return value.toLocaleString(language, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  });
}
