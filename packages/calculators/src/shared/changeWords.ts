import type { Handling, HandlingStep } from '@windlass/core/equipment';
import { pieceWords } from './loadWords.ts';

/** What the hands do, said once for both sides: `take off 2.5 kg, put on 10 kg, each side`. */
export function changeWords({ steps }: Handling): string {
  const ofOneSide = steps.filter((step) => !('place' in step) || step.place !== 'right');
  const said = ofOneSide.map(stepWords);
  const isSided = steps.some((step) => 'place' in step && step.place === 'right');
  const once = isSided ? said : [...new Set(said)];
  if (once.length === 0) return 'nothing to change';
  return `${once.join(', ')}${isSided ? ', each side' : ''}`;
}

function stepWords(step: HandlingStep): string {
  switch (step.action) {
    case 'take-off':
      return `take off ${pieceWords(step.plate.weight)}`;
    case 'put-on':
      return `put on ${pieceWords(step.plate.weight)}`;
    case 'put-back':
      return `put back ${pieceWords(step.weight)}`;
    case 'pick-up':
      return `take ${pieceWords(step.weight)}`;
    case 'remove-add-on':
      return `take ${pieceWords(step.weight)} off the top`;
    case 'fit-add-on':
      return `lay ${pieceWords(step.weight)} on top`;
    case 'move-pin':
      return `pin to ${pieceWords(step.to)}`;
    case 'set-assistance':
      return `set help to ${pieceWords(step.added)}`;
  }
}

/** How many plates of a side, from the outside, go on in a change. */
export function newPerSide({ steps }: Handling): number {
  return steps.filter((step) => step.action === 'put-on' && step.place === 'left').length;
}
