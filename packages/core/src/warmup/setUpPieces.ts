import { changeLoading, type ReachableLoad } from '../equipment/index.ts';

/** Pieces handled from the empty equipment to a loading. For plates and weights the loading knows. */
export function setUpPieces({ loading }: ReachableLoad): number {
  const isCarried = loading.kind === 'plates' || loading.kind === 'fixed';
  return isCarried ? loading.pieces : changeLoading('nothing', loading).pieces;
}
