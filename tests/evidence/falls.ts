/** Whether every value is less than the one before. */
export function falls(values: readonly number[]): boolean {
  return values.every((value, index) => index === 0 || value < (values[index - 1] ?? 0));
}

/** Values as a reader sees them in a row of orders. */
export function listed(values: readonly number[], decimals = 1): string {
  return values.map((value) => value.toFixed(decimals)).join(', ');
}
