import { requireNumber } from '../basis/index.ts';
import { addLoads, type LoadValue, loadFromValue, loadValue, scaleLoad } from '../load/index.ts';
import type { SelectorStack } from './Equipment.ts';
import { FRICTION } from './equipmentNotes.ts';
import type { Rig } from './Rig.ts';
import { requirePieces } from './requirePieces.ts';
import { rigKinds } from './rigKinds.ts';

/** Pin positions with add-ons; the load is the handle's share of the stack, friction left out. */
export function rigForStack(stack: SelectorStack): Rig {
  const { pulleyRatio } = stack;
  requireNumber('equipment', 'pulleyRatio', pulleyRatio, 0.1, 10);
  return {
    kind: 'rig',
    counts: 'stack',
    standing: 'estimate',
    notes: [FRICTION],
    bases: pinNumbers(stack).map((pin) => ({
      mass: loadFromValue(pin),
      pieces: 0,
      takesKinds: true,
      build: (plates, pieces) => ({
        kind: 'pin',
        pin,
        addOns: plates.map((plate) => plate.weight),
        pieces,
      }),
    })),
    kinds: rigKinds(stack.addOns ?? [], 1),
    piecesPerGroup: 1,
    loadOf: (mass) => scaleLoad(mass, 1, pulleyRatio),
    shownOf: (mass) => mass,
  };
}

function pinNumbers({ first, rest }: SelectorStack): readonly LoadValue[] {
  const pins = [first];
  let sum = loadFromValue(first);
  for (const { weight, pieces } of rest) {
    for (let piece = 0; piece < requirePieces(pieces); piece += 1) {
      sum = addLoads(sum, loadFromValue(weight));
      pins.push(loadValue(sum, weight.unit));
    }
  }
  return pins;
}
