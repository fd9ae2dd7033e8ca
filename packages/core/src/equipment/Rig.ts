import type { Load } from '../load/index.ts';
import type { Plate } from './Equipment.ts';
import type { Counts, EquipmentNote, Loading, LoadStanding } from './Loading.ts';

/** A kind of piece as it goes on: so many at once, so often. */
export interface RigKind {
  readonly plate: Plate;
  /** What one group adds to the mass. */
  readonly mass: Load;
  readonly groups: number;
}

/** Where a loading starts from: an empty bar, a pin, one of the fixed weights. */
export interface RigBase {
  readonly mass: Load;
  /** Pieces carried for the base itself. */
  readonly pieces: number;
  /** Whether the rig's kinds can be added to it. */
  readonly takesKinds: boolean;
  /** The loading with these plates on each side, heaviest first. */
  readonly build: (plates: readonly Plate[], pieces: number) => Loading;
}

/** What every piece of equipment comes down to: bases, and kinds of pieces that go on them. */
export interface Rig {
  readonly kind: 'rig';
  readonly counts: Counts;
  readonly standing: LoadStanding;
  readonly notes: readonly EquipmentNote[];
  readonly bases: readonly RigBase[];
  /** Heaviest first. */
  readonly kinds: readonly RigKind[];
  /** Pieces in one group: 2 for two sleeves, 4 for two handles. */
  readonly piecesPerGroup: number;
  readonly sleeveMm?: number | undefined;
  /** What has to be moved for a mass; rises with it. */
  readonly loadOf: (mass: Load) => Load;
  readonly rangeOf?: (mass: Load) => { readonly low: Load; readonly high: Load };
  readonly shownOf: (mass: Load) => Load;
}
