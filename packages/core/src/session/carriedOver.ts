import type { CapacityState } from '../capacity/index.ts';
import { pairRules } from '../pairing/index.ts';

/** The part of one exercise's fatigue that shows in another. */
export function carriedOver(state: CapacityState): CapacityState {
  const { likely } = pairRules.transfer;
  return Object.fromEntries(
    Object.entries(state).map(([muscle, { fast, slow }]) => [
      muscle,
      { fast: likely * fast, slow: likely * slow },
    ]),
  );
}
