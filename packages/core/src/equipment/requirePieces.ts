import { requireNumber } from '../basis/index.ts';

/** A number of pieces: whole, 0 to 1000. */
export function requirePieces(pieces: number): number {
  requireNumber('equipment', 'pieces', pieces, 0, 1000);
  if (!Number.isInteger(pieces)) {
    throw new RangeError(`equipment: pieces must be a whole number, got ${pieces}`);
  }
  return pieces;
}
