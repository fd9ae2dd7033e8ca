import { changeLoading, type ReachableLoad } from '../equipment/index.ts';

/** Pieces handled from a loading back to the empty equipment. */
export function stripPieces({ loading }: ReachableLoad): number {
  const isCarried = loading.kind === 'plates' || loading.kind === 'fixed';
  return isCarried ? loading.pieces : changeLoading(loading, 'nothing').pieces;
}
