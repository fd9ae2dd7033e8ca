import type { ReachableLoad } from '@windlass/core/equipment';
import { loadingWords } from '../shared/loadingWords.ts';
import type { GymInput } from './fields.ts';
import { said } from './words.ts';

/** How a load is put together; a machine without plates is no empty bar. */
export function madeOf({ gear }: Pick<GymInput, 'gear'>, one: ReachableLoad): string {
  return gear === 'machine' && one.loading.pieces === 0 ? said.noPlates : loadingWords(one);
}
