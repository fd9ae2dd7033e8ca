import { chanceWords } from './chanceWords.ts';
import { formatPercent } from './formatPercent.ts';

/** A chance for people: what may still go otherwise is not rounded to certain or impossible. */
export function formatChance(chance: number): string {
  if (chance < 1 && chance > 0.995) return chanceWords.nearlyCertain;
  if (chance > 0 && chance < 0.005) return chanceWords.nearlyImpossible;
  return formatPercent(chance);
}
