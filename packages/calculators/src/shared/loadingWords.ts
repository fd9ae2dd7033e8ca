import type { ReachableLoad } from '@windlass/core/equipment';
import { pieceWords } from './loadWords.ts';
import { plateWords } from './plateWords.ts';
import { sideOf } from './sideOf.ts';

/** How a load is put together, in a few words. */
export function loadingWords(choice: ReachableLoad): string {
  const { loading } = choice;
  switch (loading.kind) {
    case 'plates':
      return `each side ${plateWords(sideOf(choice)) || 'nothing'}`;
    case 'fixed':
      return `the pair of ${pieceWords(loading.weight)}`;
    case 'pin': {
      const onTop = loading.addOns.map((addOn) => ` + ${pieceWords(addOn)} on top`);
      return `pin at ${pieceWords(loading.pin)}${onTop.join('')}`;
    }
    case 'assistance':
      return `${pieceWords(loading.added)} of help`;
  }
}
