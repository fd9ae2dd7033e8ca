import { formatNumber } from '@windlass/calculators/ui';

/** A figure with about three digits. */
export function significant(value: number): string {
  const size = Math.abs(value);
  return formatNumber(value, size < 1 ? 3 : size < 10 ? 2 : size < 100 ? 1 : 0);
}
