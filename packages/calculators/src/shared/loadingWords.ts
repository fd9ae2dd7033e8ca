import type { PlateLoading, ReachableLoad } from '@windlass/core/equipment';
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
      return `the ${loading.hands === 2 ? 'pair of' : 'one of'} ${pieceWords(loading.weight)}`;
    case 'pin': {
      const onTop = loading.addOns.map((addOn) => ` + ${pieceWords(addOn)} on top`);
      return `pin at ${pieceWords(loading.pin)}${onTop.join('')}`;
    }
    case 'assistance': {
      const { value, unit } = loading.added;
      return `${pieceWords({ value: -value, unit })} of help`;
    }
  }
}

function stacksWords(choice: ReachableLoad, { stacks }: PlateLoading): string {
  const place = stacks[0]?.place;
  if (place === undefined) return 'nothing added';
  const plates = plateWords(sideOf(choice)) || 'nothing';
  if (place === 'post' || place === 'belt') return `on the ${place} ${plates}`;
  return `each ${place === 'left' || place === 'right' ? 'side' : 'end'} ${plates}`;
}
