import type { ReachableLoad } from '@windlass/core/equipment';
import { words } from '../words.ts';
import { pieceWords } from './loadWords.ts';
import { plateWords } from './plateWords.ts';
import { sideOf } from './sideOf.ts';

/** How a load is put together, in a few words. */
export function loadingWords(choice: ReachableLoad): string {
  const { loading } = choice;
  switch (loading.kind) {
    case 'plates': {
      const side = sideOf(choice);
      return side.length === 0 ? words.loading.emptyBar : words.loading.eachSide(plateWords(side));
    }
    case 'fixed':
      return words.loading.pair(pieceWords(loading.weight));
    case 'pin':
      return words.loading.pin(pieceWords(loading.pin), loading.addOns.map(pieceWords));
    case 'assistance':
      return words.loading.help(pieceWords(loading.added));
  }
}
