import type { PlateLoading, ReachableLoad } from '@windlass/core/equipment';
import { words } from '../words.ts';
import { pieceWords } from './loadWords.ts';
import { plateWords } from './plateWords.ts';
import { sideOf } from './sideOf.ts';

/** How a load is put together, in a few words. */
export function loadingWords(choice: ReachableLoad): string {
  const { loading } = choice;
  switch (loading.kind) {
    case 'plates':
      return stacksWords(choice, loading);
    case 'fixed':
      return words.loading[loading.hands === 2 ? 'pair' : 'one'](pieceWords(loading.weight));
    case 'pin':
      return words.loading.pin(pieceWords(loading.pin), loading.addOns.map(pieceWords));
    case 'assistance': {
      const { value, unit } = loading.added;
      return words.loading.help(pieceWords({ value: -value, unit }));
    }
  }
}

function stacksWords(choice: ReachableLoad, { stacks }: PlateLoading): string {
  const place = stacks[0]?.place;
  if (place === undefined) return words.loading.nothingAdded;
  const plates = plateWords(sideOf(choice)) || words.loading.nothing;
  if (place === 'post' || place === 'belt') return words.loading[place](plates);
  const isBar = place === 'left' || place === 'right';
  if (isBar && sideOf(choice).length === 0) return words.loading.emptyBar;
  return isBar ? words.loading.side(plates) : words.loading.end(plates);
}
