/** Nearest whole number, ties away from zero. */
export function divideToNearest(dividend: bigint, divisor: bigint): bigint {
  const negative = dividend < 0n !== divisor < 0n;
  const [top, bottom] = [absolute(dividend), absolute(divisor)];
  const quotient = (2n * top + bottom) / (2n * bottom);
  return negative ? -quotient : quotient;
}

function absolute(value: bigint): bigint {
  return value < 0n ? -value : value;
}
