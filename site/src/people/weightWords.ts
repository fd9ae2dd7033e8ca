import { formatNumber, readDecimal } from '@windlass/calculators/ui';

/** A load as it was typed, with its number written as numbers are here: `71.5 kg` for `71,5 kg`. */
export function weightWords(typed: string): string {
  const [, number = '', unit = ''] = /^\s*([\d.,]+)\s*(.*)$/.exec(typed) ?? [];
  const value = readDecimal(number);
  return value === null ? typed : `${formatNumber(value)} ${unit}`.trim();
}
