import { formatNumber } from '@windlass/calculators/ui';
import type { LoggedSet } from '@windlass/core/progress';
import { words } from './words.ts';

/** How a set ended, in a few words. */
export function endWords({ end }: LoggedSet): string {
  if (end === undefined) return words.ends.unknown;
  if (end.kind === 'failure') return words.ends.failure;
  return end.kind === 'reserve'
    ? words.ends.reserve(formatNumber(end.repsLeft, 1))
    : words.ends.more(formatNumber(end.atLeast, 1));
}
