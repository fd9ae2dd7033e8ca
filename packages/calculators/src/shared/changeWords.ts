import type { Handling, HandlingStep } from '@windlass/core/equipment';
import { words } from '../words.ts';
import { pieceWords } from './loadWords.ts';

/** What the hands do, said once for both sides: `take off 2.5 kg, put on 10 kg, each side`. */
export function changeWords({ steps }: Handling): string {
  const ofOneSide = steps.filter((step) => !('place' in step) || step.place !== 'right');
  const said = ofOneSide.map(stepWords);
  const isSided = steps.some((step) => 'place' in step && step.place === 'right');
  const once = isSided ? said : [...new Set(said)];
  return once.length === 0 ? words.change.nothing : words.change.all(once, isSided);
}

function stepWords(step: HandlingStep): string {
  const { change } = words;
  switch (step.action) {
    case 'take-off':
      return change.takeOff(pieceWords(step.plate.weight));
    case 'put-on':
      return change.putOn(pieceWords(step.plate.weight));
    case 'put-back':
      return change.putBack(pieceWords(step.weight));
    case 'pick-up':
      return change.pickUp(pieceWords(step.weight));
    case 'remove-add-on':
      return change.removeAddOn(pieceWords(step.weight));
    case 'fit-add-on':
      return change.fitAddOn(pieceWords(step.weight));
    case 'move-pin':
      return change.movePin(pieceWords(step.to));
    case 'set-assistance':
      return change.setHelp(pieceWords(step.added));
  }
}

/** How many plates of a side, from the outside, go on in a change. */
export function newPerSide({ steps }: Handling): number {
  return steps.filter((step) => step.action === 'put-on' && step.place === 'left').length;
}
