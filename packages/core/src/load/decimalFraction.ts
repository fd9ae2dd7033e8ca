/** A number as it is written, exactly: numerator over a power of ten. */
export interface DecimalFraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/**
 * Reads a decimal as JavaScript writes it (`-12.5`, `1e-7`), digit by digit, so that 0.7 is
 * seven tenths and not the binary fraction nearest to it.
 */
export function decimalFraction(decimal: string): DecimalFraction {
  const [mantissa = '0', exponent = '0'] = decimal.split('e');
  const [whole = '0', decimals = ''] = mantissa.split('.');
  const digits = BigInt(whole + decimals);
  const places = decimals.length - Number(exponent);
  return places < 0
    ? { numerator: digits * 10n ** BigInt(-places), denominator: 1n }
    : { numerator: digits, denominator: 10n ** BigInt(places) };
}
