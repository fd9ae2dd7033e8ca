import { words } from '../words.ts';
import { formatNumber } from './formatNumber.ts';

/** A share as percent, for people. */
export function formatPercent(share: number, decimals = 0): string {
  return words.chance.percent(formatNumber(100 * share, decimals));
}
