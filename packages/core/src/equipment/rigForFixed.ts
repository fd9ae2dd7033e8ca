import { loadFromValue } from '../load/index.ts';
import type { EquipmentUse, FixedWeights } from './Equipment.ts';
import type { NoLoads } from './Loading.ts';
import type { Rig } from './Rig.ts';
import { requirePieces } from './requirePieces.ts';
import { rigKinds } from './rigKinds.ts';

/** Weights of one piece, single or as pairs; the load is that of one hand, or of the bar. */
export function rigForFixed(rack: FixedWeights, use: EquipmentUse): Rig | NoLoads {
  const hands = rack.form === 'barbell' ? 1 : (use.hands ?? 2);
  const inStock = rack.weights.filter(({ pieces }) => requirePieces(pieces) > 0);
  const usable = inStock.filter(({ pieces }) => pieces >= hands);
  if (inStock.length > 0 && usable.length === 0) {
    return {
      kind: 'none',
      reason: 'no-pair',
      message: `${rack.name} has no two pieces of the same weight, so nothing can be used as a pair.`,
    };
  }
  return {
    kind: 'rig',
    counts: rack.form === 'barbell' ? 'total' : 'each-hand',
    standing: 'exact',
    notes: [],
    bases: usable.map(({ weight }) => ({
      mass: loadFromValue(weight),
      pieces: hands,
      takesKinds: true,
      build: (plates, pieces) => ({
        kind: 'fixed',
        weight,
        hands,
        addOns: plates.map((plate) => plate.weight),
        pieces,
      }),
    })),
    kinds: rigKinds(rack.addOns ?? [], hands, 1),
    piecesPerGroup: hands,
    loadOf: (mass) => mass,
    shownOf: (mass) => mass,
  };
}
