import { type Json, setAt } from './tree.ts';

/** A draft whose loads are said in a unit; what was typed in another one stays. */
export function inUnit(draft: Json, unit: string): Json {
  return setAt(draft, ['intent', 'unit'], unit);
}
