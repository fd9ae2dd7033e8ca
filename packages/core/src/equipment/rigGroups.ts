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
