import type { ReachableLoad } from '@windlass/core/equipment';
import { subtractLoad, type Unit } from '@windlass/core/load';
import { loadWords } from '../shared/loadWords.ts';
import { words } from '../words.ts';

/** The number of a load as it is read: help as help, not as a minus. */
export function numberWords({ shown }: ReachableLoad, unit: Unit): string {
  const nothing = subtractLoad(shown, shown);
  return shown < nothing
    ? words.loading.help(loadWords(subtractLoad(nothing, shown), unit))
    : loadWords(shown, unit);
}
