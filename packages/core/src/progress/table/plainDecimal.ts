/** A decimal without an exponent or marks between thousands, down to the smallest step of a load. */
export function plainDecimal(value: number): string {
  return value.toLocaleString('en', { useGrouping: false, maximumFractionDigits: 11 });
}
