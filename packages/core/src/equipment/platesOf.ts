import type { Plate } from './Equipment.ts';
import type { Rig } from './Rig.ts';

/** The plates of one side, heavy ones first, from how many groups of each kind there are. */
export function platesOf(rig: Rig, counts: readonly number[]): readonly Plate[] {
  const plates: Plate[] = [];
  for (const [index, { plate }] of rig.kinds.entries()) {
    for (let piece = counts[index] ?? 0; piece > 0; piece -= 1) plates.push(plate);
  }
  return plates;
}
