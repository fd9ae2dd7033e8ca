import type { Station } from '../anatomy/index.ts';
import type { Gym } from '../equipment/index.ts';

/** A bench, a rack, a machine of some movement: what an exercise needs besides its load. */
export interface GymStation {
  readonly station: Station;
  /** Id of the equipment that belongs to it; left out for what any load can be brought to. */
  readonly equipment?: string;
}

/** A gym that may name its stations, so that exercises can be proposed for it. */
export interface PlanGym extends Gym {
  readonly stations?: readonly GymStation[];
}
