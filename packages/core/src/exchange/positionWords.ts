import { loadedPositions, type PositionId } from '../anatomy/index.ts';

/** The phrase for a loaded position, to go after "it has". */
export function positionWords(position: PositionId): string {
  return loadedPositions.find(({ id }) => id === position)?.what ?? position;
}
