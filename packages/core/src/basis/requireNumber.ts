/**
 * Stops a programmer's mistake at a public function: a number that is not finite or out of range.
 * Input from people goes through `@windlass/core/schema` and never reaches this.
 *
 * @throws RangeError naming the function, the argument, the value and the range.
 */
export function requireNumber(
  where: string,
  name: string,
  value: number,
  min = Number.NEGATIVE_INFINITY,
  max = Number.POSITIVE_INFINITY,
): void {
  if (Number.isFinite(value) && value >= min && value <= max) return;
  throw new RangeError(`${where}: ${name} must be a finite number${range(min, max)}, got ${value}`);
}

function range(min: number, max: number): string {
  if (Number.isFinite(min) && Number.isFinite(max)) return ` from ${min} to ${max}`;
  if (Number.isFinite(min)) return ` of at least ${min}`;
  if (Number.isFinite(max)) return ` of at most ${max}`;
  return '';
}
