import { type Load, loadFromValue } from '../load/index.ts';
import type { PieceStock, PlateStock } from './Equipment.ts';
import type { RigKind } from './Rig.ts';
import { requirePieces } from './requirePieces.ts';

/**
 * Stock as kinds, heaviest first, that go on `piecesPerGroup` at a time, each group adding
 * `countedPieces` of its weight.
 * Pieces left over from the last full group stay on the rack.
 */
export function rigKinds(
  stock: readonly (PlateStock | PieceStock)[],
  piecesPerGroup: number,
  countedPieces = piecesPerGroup,
): readonly RigKind[] {
  const kinds = stock.map(({ pieces, ...plate }) => {
    const weight = loadFromValue(plate.weight);
    if (weight <= 0)
      throw new RangeError(`equipment: a piece must weigh more than 0, got ${weight}`);
    return {
      plate,
      mass: (weight * countedPieces) as Load,
      groups: Math.floor(requirePieces(pieces) / piecesPerGroup),
    };
  });
  return kinds.sort((a, b) => b.mass - a.mass);
}
