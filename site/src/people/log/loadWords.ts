import { formatNumber } from '@windlass/calculators/ui';
import type { LoggedSet } from '@windlass/core/progress';
import { words } from './words.ts';

/** The load of a set as people say it: `22 kg each hand`, `10 kg help`. */
export function loadWords({ load, counts, side }: LoggedSet): string {
  const isHelp = counts === 'added' && load.value < 0;
  const number = `${formatNumber(Math.abs(load.value), 4)} ${load.unit}`;
  const signed = load.value < 0 && !isHelp ? `−${number}` : number;
  return [signed, isHelp ? words.help : words.counts[counts], side && words.sides[side]]
    .filter(Boolean)
    .join(' ');
}
