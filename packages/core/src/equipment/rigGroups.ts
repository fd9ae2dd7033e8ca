import type { Plate } from './Equipment.ts';
import type { GroupKind } from './groupSums.ts';
import { micrometres } from './micrometres.ts';
import type { Rig } from './Rig.ts';

/** The rig's kinds as sums are made of them, and the room that a sleeve has. */
export function rigGroups(rig: Rig): {
  readonly kinds: readonly GroupKind[];
  readonly roomLimit: number;
} {
  return {
    kinds: rig.kinds.map(({ mass, groups, plate }) => ({
      mass,
      groups,
      room: micrometres(plate.thicknessMm ?? 0),
    })),
    roomLimit: rig.sleeveMm === undefined ? Number.POSITIVE_INFINITY : micrometres(rig.sleeveMm),
  };
}

/** The plates of one side, heavy ones first, from how many groups of each kind there are. */
export function platesOf(rig: Rig, counts: readonly number[]): readonly Plate[] {
  const plates: Plate[] = [];
  for (const [index, { plate }] of rig.kinds.entries()) {
    for (let piece = counts[index] ?? 0; piece > 0; piece -= 1) plates.push(plate);
  }
  return plates;
}
