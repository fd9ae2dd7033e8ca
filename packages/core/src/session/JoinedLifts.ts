import type { Band } from '../basis/index.ts';
import type { ReachableLoad } from '../equipment/index.ts';
import type { Caution } from '../safety/index.ts';
import type { LoadChance } from '../strength/index.ts';
import type { JoinIntent } from './Intent.ts';

/** What an isolation set right before it does to a lift. */
export interface PairEffect {
  /** What would be loaded without the isolation set. */
  readonly usual: LoadChance<ReachableLoad>;
  /** Load for the usual repetitions, as a share of the usual load. */
  readonly loadShare: Band;
  /** How much of what the isolation set took for the moment is back when the lift begins, 0 to 1. */
  readonly recovered: number;
  /** After the first try: this share of the load for each repetition more or fewer than wanted. */
  readonly sharePerRep: number;
  readonly cautions: readonly Caution[];
}

/** A lift that is done in rounds with its neighbour in the plan. */
export interface JoinedLift {
  readonly kind: JoinIntent['kind'];
  /** `first` is joined with the lift after it in the plan, `second` with the one before. */
  readonly place: 'first' | 'second';
  /** From the end of one set to the first repetition of the other. */
  readonly transitionSeconds: number;
  /** Rest after each round but the last, no shorter than either lift wants. */
  readonly waits: readonly number[];
  /** On the second lift of a pair. */
  readonly effect?: PairEffect;
}
