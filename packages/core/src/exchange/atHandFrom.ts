import type { Station } from '../anatomy/index.ts';
import type { Gym } from '../equipment/index.ts';
import type { AtHand } from './AtHand.ts';

/**
 * What a gym has at hand: its kinds of load from its equipment, its stations as they are named.
 *
 * @param gym as for loads. A list of plates alone loads nothing.
 * @param stations benches, racks and machines by movement; an inventory of loads does not say them.
 * @example
 * ```ts
 * import { atHandFrom } from '@windlass/core/exchange';
 * const bar = { kind: 'barbell', id: 'b', name: 'Bar', bar: { value: 15, unit: 'kg' } } as const;
 * atHandFrom({ name: 'Boathouse', plates: [], equipment: [bar] }, ['rack']).loads; // ['barbell']
 * ```
 */
export function atHandFrom(gym: Gym, stations: readonly Station[]): AtHand {
  const forms = gym.equipment.flatMap((item) => (item.kind === 'fixed' ? [item.form] : []));
  return {
    loads: [...new Set(gym.equipment.map(({ kind }) => kind))],
    fixedForms: [...new Set(forms)],
    stations,
  };
}
